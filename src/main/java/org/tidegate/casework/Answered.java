package org.tidegate.casework;

import java.time.Instant;
import java.util.List;
import org.tidegate.work.LetterKind;
import org.tidegate.work.OutboxLetter;
import org.tidegate.work.OutboxState;

/** Whether the suggested reply has been given already, so that nobody gives it a second time without wanting to. */
final class Answered {

    private Answered() {}

    /** @param assessed when the submission was assessed last: what is said after that is said about what stands now */
    static boolean since(Instant assessed, List<OutboxLetter> letters) {
        return letters.stream()
                .filter(l -> l.kind() == LetterKind.REQUEST && !l.made().isBefore(assessed))
                .anyMatch(l -> l.state() != OutboxState.RECALLED && !l.state().failed());
    }
}
