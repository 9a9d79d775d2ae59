package org.tidegate.examination.subject;

import org.tidegate.rules.SubjectRules;

/** Whether free text is no more than a covering note, so that the machine may answer by itself. */
public final class CoveringNote {

    private CoveringNote() {}

    /** Short, and without a question. */
    public static boolean only(String body, SubjectRules rules) {
        String text = body.strip();
        return text.length() <= rules.coveringNoteChars()
                && !text.contains("?")
                && !text.contains("？")
                && !text.contains("؟");
    }
}
