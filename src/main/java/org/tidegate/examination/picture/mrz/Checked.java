package org.tidegate.examination.picture.mrz;

import java.util.List;
import java.util.stream.Collectors;

/**
 * Something that a check digit covers.
 *
 * @param what in plain English
 * @param data the parts, joined in this order
 * @param digit where its check digit stands
 */
record Checked(String what, List<Span> data, Span digit) {

    boolean holds(List<String> lines) {
        return CheckDigit.holds(data(lines), digit.in(lines).charAt(0));
    }

    String data(List<String> lines) {
        return data.stream().map(span -> span.in(lines)).collect(Collectors.joining());
    }
}
