package org.tidegate.console;

import java.security.Principal;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.server.ResponseStatusException;
import org.tidegate.casework.ActionResult;
import org.tidegate.casework.Casebook;
import org.tidegate.casework.QueueRow;
import org.tidegate.casework.Replying;
import org.tidegate.casework.Replying.Draft;
import org.tidegate.casework.Ticket;
import org.tidegate.finding.DiscrepancyCode;
import org.tidegate.work.SubmissionId;

/** One answer for many equal cases: those that one and the same discrepancy holds, and nothing else. */
@Controller
class ManyController {

    private static final int MOST = 50;

    private final Casebook casebook;
    private final Replying replying;
    private final Person person;
    private final Clock clock;

    ManyController(Casebook casebook, Replying replying, Person person, Clock clock) {
        this.casebook = casebook;
        this.replying = replying;
        this.person = person;
        this.clock = clock;
    }

    /** One of the cases. */
    record Equal(String ticket, String number, long id, String who, String to, String text) {}

    @PostMapping("/queue/answer")
    String lookFirst(@RequestParam String kind, Model model) {
        DiscrepancyCode code =
                DiscrepancyCode.ofCode(kind).orElseThrow(() -> new ResponseStatusException(HttpStatus.BAD_REQUEST));
        List<Equal> equal = new ArrayList<>();
        for (QueueRow row : casebook.queue(clock.instant())) {
            if (equal.size() < MOST && alone(row, code)) {
                replying.draft(row.id(), Optional.empty())
                        .filter(d -> d.to().isPresent())
                        .ifPresent(d -> equal.add(equal(row, d)));
            }
        }
        model.addAttribute("kind", code.code());
        model.addAttribute("equal", equal);
        return "answer-many";
    }

    private static boolean alone(QueueRow row, DiscrepancyCode code) {
        return !row.urgent() && row.holds().size() == 1 && row.holds().get(0).code() == code;
    }

    private static Equal equal(QueueRow row, Draft d) {
        String ticket = d.ticket().id().value() + "." + d.ticket().version();
        return new Equal(ticket, row.id().toString(), row.id().value(), row.who(), d.to().orElse(""), d.text());
    }

    @PostMapping("/queue/answer/confirm")
    String send(@RequestParam(defaultValue = "") List<String> tickets, Principal who, Model model) {
        List<Ticket> chosen =
                tickets.stream().limit(MOST).map(ManyController::ticket).toList();
        Map<SubmissionId, ActionResult> results = replying.sendAll(person.of(who), chosen);
        model.addAttribute("results", results.entrySet());
        model.addAttribute(
                "sent",
                results.values().stream()
                        .filter(r -> r instanceof ActionResult.Done)
                        .count());
        return "answered-many";
    }

    private static Ticket ticket(String written) {
        String[] parts = written.split("\\.", 2);
        try {
            return new Ticket(new SubmissionId(Long.parseLong(parts[0])), Integer.parseInt(parts[1]));
        } catch (NumberFormatException | ArrayIndexOutOfBoundsException e) {
            throw new ResponseStatusException(HttpStatus.BAD_REQUEST, "This is no form of ours.", e);
        }
    }
}
