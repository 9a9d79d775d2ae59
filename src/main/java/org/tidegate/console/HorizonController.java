package org.tidegate.console;

import java.security.Principal;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.server.ResponseStatusException;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import org.tidegate.casework.ActionResult;
import org.tidegate.casework.NewTimes;
import org.tidegate.casework.Ticket;
import org.tidegate.report.Horizon;
import org.tidegate.report.Outlook;
import org.tidegate.work.SubmissionId;

/** When the queue will be clear, which promises will break, and honest new times for those who will wait. */
@Controller
class HorizonController {

    private static final int MOST = 200;

    private final Outlook outlook;
    private final NewTimes newTimes;
    private final Presence presence;
    private final Person person;
    private final PageWords pageWords;

    HorizonController(Outlook outlook, NewTimes newTimes, Presence presence, Person person, PageWords pageWords) {
        this.outlook = outlook;
        this.newTimes = newTimes;
        this.presence = presence;
        this.person = person;
        this.pageWords = pageWords;
    }

    /**
     * A letter to look at before it goes.
     *
     * @param value ticket and time, as the form hands them back
     */
    record Shown(String value, String number, long id, String who, String to, String time, String text) {}

    @GetMapping("/horizon")
    String horizon(@RequestParam(required = false) Optional<Integer> people, Locale locale, Model model) {
        int present = Math.max(1, presence.people());
        Horizon h = outlook.with(people.orElse(present));
        model.addAttribute("present", present);
        model.addAttribute("h", HorizonView.of(h, pageWords.in(locale)));
        return "horizon";
    }

    @PostMapping("/horizon/new-times")
    String lookFirst(@RequestParam int people, Locale locale, Model model) {
        Words words = pageWords.in(locale);
        Map<SubmissionId, Instant> late = new LinkedHashMap<>();
        outlook.with(people).late().stream().limit(MOST).forEach(l -> late.put(l.id(), l.honest()));
        List<Shown> letters = newTimes.drafts(late).stream()
                .map(d -> new Shown(
                        d.ticket().id().value() + "." + d.ticket().version() + "."
                                + d.newTime().getEpochSecond(),
                        d.ticket().id().toString(),
                        d.ticket().id().value(),
                        d.who(),
                        d.to(),
                        words.clock(d.newTime()),
                        d.text()))
                .toList();
        model.addAttribute("letters", letters);
        return "new-times";
    }

    @PostMapping("/horizon/new-times/confirm")
    String tell(
            @RequestParam(defaultValue = "") List<String> tickets,
            Principal who,
            Locale locale,
            RedirectAttributes flash) {
        Map<Ticket, Instant> times = new LinkedHashMap<>();
        tickets.stream().limit(MOST).forEach(written -> put(written, times));
        Map<Ticket, ActionResult> results = newTimes.tell(person.of(who), times);
        long sent = results.values().stream()
                .filter(r -> r instanceof ActionResult.Done)
                .count();
        flash.addFlashAttribute("done", pageWords.in(locale).say("horizon.sent", sent));
        List<String> refused = results.values().stream()
                .filter(r -> !(r instanceof ActionResult.Done))
                .map(ActionResult::words)
                .toList();
        if (!refused.isEmpty()) {
            flash.addFlashAttribute("problem", String.join(" ", refused));
        }
        return "redirect:/horizon";
    }

    private static void put(String written, Map<Ticket, Instant> times) {
        String[] parts = written.split("\\.", 3);
        try {
            times.put(
                    new Ticket(new SubmissionId(Long.parseLong(parts[0])), Integer.parseInt(parts[1])),
                    Instant.ofEpochSecond(Long.parseLong(parts[2])));
        } catch (NumberFormatException | ArrayIndexOutOfBoundsException | java.time.DateTimeException e) {
            throw new ResponseStatusException(HttpStatus.BAD_REQUEST, "This is no form of ours.", e);
        }
    }
}
