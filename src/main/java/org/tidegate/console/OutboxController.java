package org.tidegate.console;

import java.security.Principal;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import org.tidegate.casework.ActionResult;
import org.tidegate.casework.OutboxDesk;
import org.tidegate.work.OutboxLetter;
import org.tidegate.work.OutboxState;

/** What is on its way out, what went, and what nobody can be sure of. */
@Controller
class OutboxController {

    private static final Duration SHOWN = Duration.ofHours(24);

    private final OutboxDesk outbox;
    private final Person person;
    private final Clock clock;
    private final PageWords pageWords;

    OutboxController(OutboxDesk outbox, Person person, Clock clock, PageWords pageWords) {
        this.outbox = outbox;
        this.person = person;
        this.clock = clock;
        this.pageWords = pageWords;
    }

    @GetMapping("/outbox")
    String outbox(Principal who, Locale locale, Model model) {
        Instant now = clock.instant();
        Words words = pageWords.in(locale);
        List<OutboxLetter> open = new ArrayList<>();
        for (OutboxState state : List.of(OutboxState.UNCERTAIN, OutboxState.ATTEMPTING, OutboxState.WAITING)) {
            open.addAll(outbox.inState(state));
        }
        List<OutboxLetter> recent = new ArrayList<>(outbox.written(now.minus(SHOWN), now.plusMillis(1)));
        recent.removeIf(l -> open.stream().anyMatch(o -> o.id() == l.id()));
        java.util.Collections.reverse(recent);
        model.addAttribute("open", LetterLine.all(open, now, words));
        model.addAttribute("recent", LetterLine.all(recent, now, words));
        return "outbox";
    }

    @PostMapping("/outbox/{letter}/recall")
    String recall(@PathVariable long letter, Principal who, RedirectAttributes flash) {
        return after(outbox.recall(person.of(who), letter), flash);
    }

    @PostMapping("/outbox/{letter}/resolve")
    String resolve(@PathVariable long letter, @RequestParam boolean went, Principal who, RedirectAttributes flash) {
        return after(outbox.resolve(person.of(who), letter, went), flash);
    }

    private static String after(ActionResult result, RedirectAttributes flash) {
        if (result instanceof ActionResult.Done done) {
            return Outcome.then(done, done.submission().id(), flash);
        }
        if (result instanceof ActionResult.Forbidden) {
            throw new org.springframework.web.server.ResponseStatusException(
                    org.springframework.http.HttpStatus.FORBIDDEN);
        }
        flash.addFlashAttribute("problem", result.words());
        return "redirect:/outbox";
    }
}
