package org.tidegate.console;

import java.security.Principal;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.server.ResponseStatusException;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import org.tidegate.casework.Registering;

/** Lots that must not be used, and times in which our own mail was down. */
@Controller
class RegistersController {

    private final Registering registers;
    private final Person person;
    private final Clock clock;
    private final PageWords pageWords;

    RegistersController(Registering registers, Person person, Clock clock, PageWords pageWords) {
        this.registers = registers;
        this.person = person;
        this.clock = clock;
        this.pageWords = pageWords;
    }

    /** A row of either register. */
    record Line(String name, String when, String reason, String who) {}

    @GetMapping("/registers")
    String registers(Principal who, Locale locale, Model model) {
        Instant now = clock.instant();
        Words words = pageWords.in(locale);
        List<Line> lots = registers.quarantined().stream()
                .map(q -> new Line(
                        q.lot(), words.both(q.since(), now), q.reason(), q.who().value()))
                .toList();
        List<Line> outages = registers.outages().stream()
                .map(o -> new Line(
                        words.dateAndTime(o.from()) + " – " + words.dateAndTime(o.until()), "", o.reason(), ""))
                .toList();
        model.addAttribute("lots", lots);
        model.addAttribute("outages", outages);
        model.addAttribute("may", person.may(who));
        model.addAttribute("zone", words.zone().getId());
        return "registers";
    }

    @PostMapping("/registers/lots")
    String quarantine(@RequestParam String lot, @RequestParam String reason, Principal who, RedirectAttributes flash) {
        return after(registers.quarantine(person.of(who), lot, reason), flash);
    }

    @PostMapping("/registers/lots/lift")
    String lift(@RequestParam String lot, Principal who, RedirectAttributes flash) {
        return after(registers.lift(person.of(who), lot), flash);
    }

    /** Wall times of the clinic; of the hour that comes twice in autumn the first one counts. */
    @PostMapping("/registers/outages")
    String outage(
            @RequestParam String from,
            @RequestParam String until,
            @RequestParam String reason,
            Principal who,
            RedirectAttributes flash) {
        return after(registers.outage(person.of(who), time(from), time(until), reason), flash);
    }

    private Instant time(String wall) {
        return WallTime.first(wall, pageWords.in(Locale.ROOT).zone()).toInstant();
    }

    private static String after(Registering.Entry entry, RedirectAttributes flash) {
        if (entry instanceof Registering.Entry.Made made) {
            flash.addFlashAttribute("assessed", made.assessedAgain());
        } else if (entry instanceof Registering.Entry.Refused refused) {
            flash.addFlashAttribute("problem", refused.words());
        } else {
            throw new ResponseStatusException(HttpStatus.FORBIDDEN);
        }
        return "redirect:/registers";
    }
}
