package org.tidegate.console;

import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.web.server.ResponseStatusException;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import org.tidegate.casework.ActionResult;
import org.tidegate.work.SubmissionId;

/** Tells a person on the next page what became of an action. */
final class Outcome {

    private Outcome() {}

    /** Where the page goes after the action, with the words that it shows there. */
    static String then(ActionResult result, SubmissionId from, RedirectAttributes flash) {
        if (result instanceof ActionResult.Forbidden) {
            throw new ResponseStatusException(HttpStatus.FORBIDDEN);
        }
        if (result instanceof ActionResult.Missing) {
            throw new ResponseStatusException(HttpStatus.NOT_FOUND);
        }
        boolean done = result instanceof ActionResult.Done;
        flash.addFlashAttribute(done ? "done" : "problem", result.words());
        letter(result).ifPresent(n -> flash.addFlashAttribute("letter", n));
        SubmissionId to = result instanceof ActionResult.Done d ? d.submission().id() : from;
        return "redirect:/submissions/" + to.value();
    }

    private static Optional<Long> letter(ActionResult result) {
        return result instanceof ActionResult.Done d ? d.letter() : Optional.empty();
    }
}
