package org.tidegate.console;

import java.security.Principal;
import java.util.Optional;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import org.tidegate.casework.ReadingDesk;
import org.tidegate.casework.ReadingDesk.Seen;
import org.tidegate.casework.Ticket;
import org.tidegate.work.Reading.Line;
import org.tidegate.work.SubmissionId;

/** What trained readers do. */
@Controller
class ReadingController {

    private static final int LONGEST = 60;

    private final ReadingDesk reading;
    private final Person person;

    ReadingController(ReadingDesk reading, Person person) {
        this.reading = reading;
        this.person = person;
    }

    @PostMapping("/submissions/{id}/reading")
    String read(
            @PathVariable long id,
            @RequestParam int version,
            @RequestParam Line control,
            @RequestParam Line test,
            @RequestParam(defaultValue = "") String lot,
            @RequestParam(defaultValue = "") String mark,
            @RequestParam(defaultValue = "false") boolean unmarked,
            Principal who,
            RedirectAttributes flash) {
        Ticket ticket = new Ticket(new SubmissionId(id), version);
        Seen seen = new Seen(control, test, written(lot), written(mark), !unmarked);
        return Outcome.then(reading.read(person.of(who), ticket, seen), ticket.id(), flash);
    }

    @PostMapping("/submissions/{id}/release")
    String release(@PathVariable long id, @RequestParam int version, Principal who, RedirectAttributes flash) {
        Ticket ticket = new Ticket(new SubmissionId(id), version);
        return Outcome.then(reading.release(person.of(who), ticket), ticket.id(), flash);
    }

    @PostMapping("/submissions/{id}/amend")
    String amend(
            @PathVariable long id,
            @RequestParam int version,
            @RequestParam Line control,
            @RequestParam Line test,
            @RequestParam String reason,
            Principal who,
            RedirectAttributes flash) {
        Ticket ticket = new Ticket(new SubmissionId(id), version);
        Seen seen = new Seen(control, test, Optional.empty(), Optional.empty(), true);
        return Outcome.then(reading.amend(person.of(who), ticket, seen, reason), ticket.id(), flash);
    }

    @PostMapping("/submissions/{id}/withdraw")
    String withdraw(
            @PathVariable long id,
            @RequestParam int version,
            @RequestParam String reason,
            Principal who,
            RedirectAttributes flash) {
        Ticket ticket = new Ticket(new SubmissionId(id), version);
        return Outcome.then(reading.withdraw(person.of(who), ticket, reason), ticket.id(), flash);
    }

    private static Optional<String> written(String text) {
        String kept = text.strip();
        return kept.isEmpty() ? Optional.empty() : Optional.of(kept.substring(0, Math.min(LONGEST, kept.length())));
    }
}
