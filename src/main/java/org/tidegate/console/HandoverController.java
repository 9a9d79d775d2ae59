package org.tidegate.console;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.server.ResponseStatusException;
import org.tidegate.report.Handover;
import org.tidegate.report.Handovers;

/** What a shift that begins has to know. */
@Controller
class HandoverController {

    private final Handovers handovers;
    private final Clock clock;
    private final PageWords pageWords;

    HandoverController(Handovers handovers, Clock clock, PageWords pageWords) {
        this.handovers = handovers;
        this.clock = clock;
        this.pageWords = pageWords;
    }

    /**
     * One period.
     *
     * @param from wall time of the clinic; empty for when the last shift ended
     * @param to likewise; empty for now
     */
    @GetMapping("/handover")
    String handover(
            @RequestParam(defaultValue = "") String from,
            @RequestParam(defaultValue = "") String to,
            Locale locale,
            Model model) {
        Words words = pageWords.in(locale);
        Instant until = time(to, words.zone()).orElseGet(clock::instant);
        Optional<Instant> since = time(from, words.zone());
        if (since.filter(t -> !t.isBefore(until)).isPresent()) {
            throw new ResponseStatusException(HttpStatus.BAD_REQUEST, "Nothing lies between.");
        }
        Handover h = since.map(t -> handovers.of(t, until)).orElseGet(() -> handovers.lastNight(until));
        model.addAttribute("page", HandoverPage.of(h, words));
        model.addAttribute("from", wall(h.from(), words.zone()));
        model.addAttribute("to", wall(h.until(), words.zone()));
        model.addAttribute("zone", words.zone().getId());
        return "handover";
    }

    private static Optional<Instant> time(String wall, ZoneId zone) {
        return wall.isBlank()
                ? Optional.empty()
                : Optional.of(WallTime.first(wall, zone).toInstant());
    }

    private static String wall(Instant t, ZoneId zone) {
        return t.atZone(zone).toLocalDateTime().truncatedTo(ChronoUnit.MINUTES).toString();
    }
}
