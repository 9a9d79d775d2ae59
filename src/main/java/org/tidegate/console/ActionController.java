package org.tidegate.console;

import java.security.Principal;
import java.util.List;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.server.ResponseStatusException;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import org.tidegate.booking.TestKey;
import org.tidegate.casework.ActionResult;
import org.tidegate.casework.Claiming;
import org.tidegate.casework.Judging;
import org.tidegate.casework.Judging.Reason;
import org.tidegate.casework.Ticket;
import org.tidegate.finding.DiscrepancyCode;
import org.tidegate.work.SubmissionId;
import org.tidegate.work.User;

/** Deciding on a submission: taking it up, judging, linking, setting aside, opening again. */
@Controller
class ActionController {

    private final Claiming claiming;
    private final Judging judging;
    private final Person person;

    ActionController(Claiming claiming, Judging judging, Person person) {
        this.claiming = claiming;
        this.judging = judging;
        this.person = person;
    }

    @PostMapping("/submissions/{id}/claim")
    String claim(@PathVariable long id, Principal who, RedirectAttributes flash) {
        SubmissionId submission = new SubmissionId(id);
        return Outcome.then(claiming.claim(person.of(who), submission), submission, flash);
    }

    @PostMapping("/submissions/{id}/put-back")
    String putBack(@PathVariable long id, Principal who, RedirectAttributes flash) {
        SubmissionId submission = new SubmissionId(id);
        return Outcome.then(claiming.release(person.of(who), submission), submission, flash);
    }

    @PostMapping("/submissions/{id}/judgement")
    String judge(
            @PathVariable long id,
            @RequestParam int version,
            @RequestParam(defaultValue = "") List<String> codes,
            @RequestParam String decision,
            @RequestParam String reason,
            @RequestParam(defaultValue = "") String note,
            Principal who,
            RedirectAttributes flash) {
        SubmissionId submission = new SubmissionId(id);
        List<DiscrepancyCode> decided =
                codes.stream().flatMap(c -> DiscrepancyCode.ofCode(c).stream()).toList();
        ActionResult result =
                judged(decision, person.of(who), new Ticket(submission, version), decided, reason(reason, note));
        return Outcome.then(result, submission, flash);
    }

    private ActionResult judged(String decision, User who, Ticket ticket, List<DiscrepancyCode> codes, Reason reason) {
        return switch (decision) {
            case "accept" -> judging.accept(who, ticket, codes, reason);
            case "repeat" -> judging.repeat(who, ticket, codes, reason);
            case "void" -> judging.voidTest(who, ticket, codes, reason);
            default -> throw new ResponseStatusException(HttpStatus.BAD_REQUEST, "No such decision.");
        };
    }

    @PostMapping("/submissions/{id}/set-aside")
    String setAside(
            @PathVariable long id,
            @RequestParam int version,
            @RequestParam(defaultValue = "no-bearing") String reason,
            @RequestParam(defaultValue = "") String note,
            Principal who,
            RedirectAttributes flash) {
        Ticket ticket = new Ticket(new SubmissionId(id), version);
        return Outcome.then(judging.setAside(person.of(who), ticket, reason(reason, note)), ticket.id(), flash);
    }

    @PostMapping("/submissions/{id}/reopen")
    String reopen(
            @PathVariable long id,
            @RequestParam int version,
            @RequestParam(defaultValue = "other") String reason,
            @RequestParam(defaultValue = "") String note,
            Principal who,
            RedirectAttributes flash) {
        Ticket ticket = new Ticket(new SubmissionId(id), version);
        return Outcome.then(judging.reopen(person.of(who), ticket, reason(reason, note)), ticket.id(), flash);
    }

    /** @param test a reference of the book, with {@code #2} for the second attempt */
    @PostMapping("/submissions/{id}/link")
    String link(
            @PathVariable long id,
            @RequestParam int version,
            @RequestParam String test,
            Principal who,
            RedirectAttributes flash) {
        Ticket ticket = new Ticket(new SubmissionId(id), version);
        ActionResult result = judging.relink(person.of(who), ticket, test(test), Reason.of("other"));
        return Outcome.then(result, ticket.id(), flash);
    }

    private static TestKey test(String written) {
        return TestKey.parse(written)
                .orElseThrow(
                        () -> new ResponseStatusException(HttpStatus.BAD_REQUEST, "That is no reference of a test."));
    }

    private static Reason reason(String code, String note) {
        String text = note.strip();
        return new Reason(
                code,
                text.isEmpty() ? Optional.empty() : Optional.of(text.substring(0, Math.min(1000, text.length()))));
    }
}
