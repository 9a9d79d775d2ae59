package org.tidegate.examination.picture.mrz;

import java.util.List;

/** Characters of one line: from (inclusive) to (exclusive), counted from 0. */
record Span(int line, int from, int to) {

    String in(List<String> lines) {
        return lines.get(line).substring(from, to);
    }

    boolean holds(int atLine, int at) {
        return line == atLine && at >= from && at < to;
    }
}
