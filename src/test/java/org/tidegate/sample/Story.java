package org.tidegate.sample;

import java.util.List;

/**
 * One message of the sample morning and what a careful clerk would make of it.
 *
 * @param file name of the .eml file
 * @param message the raw bytes
 * @param outcome match, ambiguous or none
 * @param ref the matched reference, or empty
 * @param verdict to-read, held or aside
 * @param holds codes that hold it, sorted
 * @param notes codes that stand as notes, sorted
 * @param photo verdict on the photo's time, or {@code -} where nothing is to be judged
 * @param sent verdict on the sending time, or {@code -}
 * @param told what really happened
 */
record Story(
        String file,
        byte[] message,
        String outcome,
        String ref,
        String verdict,
        List<String> holds,
        List<String> notes,
        String photo,
        String sent,
        String told) {

    static final String HEADER = "file,outcome,ref,verdict,holds,notes,photo,sent,story";

    String csv() {
        return String.join(
                ",",
                file,
                outcome,
                ref,
                verdict,
                String.join(" ", holds),
                String.join(" ", notes),
                photo,
                sent,
                "\"" + told.replace("\"", "'") + "\"");
    }

    /** The same story with these notes. */
    Story noting(String... codes) {
        List<String> sorted = List.of(codes).stream().sorted().toList();
        return new Story(file, message, outcome, ref, verdict, holds, sorted, photo, sent, told);
    }
}
