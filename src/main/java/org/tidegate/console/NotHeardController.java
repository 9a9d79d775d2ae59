package org.tidegate.console;

import java.security.Principal;
import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZonedDateTime;
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
import org.tidegate.booking.TestKey;
import org.tidegate.booking.TestRecord.Observed;
import org.tidegate.casework.NotHeardFrom;
import org.tidegate.casework.Observing;
import org.tidegate.casework.Reminding;
import org.tidegate.casework.SilentTest;
import org.tidegate.store.Observation;

/** Tests of which nothing came: whom to remind while there is time, and what the observer wrote down. */
@Controller
class NotHeardController {

    private static final int MOST = 50;
    private static final String BACK = "redirect:/not-heard-from";

    private final NotHeardFrom silent;
    private final Reminding reminding;
    private final Observing observing;
    private final Person person;
    private final Clock clock;
    private final PageWords pageWords;

    NotHeardController(
            NotHeardFrom silent,
            Reminding reminding,
            Observing observing,
            Person person,
            Clock clock,
            PageWords pageWords) {
        this.silent = silent;
        this.reminding = reminding;
        this.observing = observing;
        this.person = person;
        this.clock = clock;
        this.pageWords = pageWords;
    }

    /** A reminder to look at before it goes. */
    record Shown(String key, String who, String to, String text) {}

    @GetMapping("/not-heard-from")
    String list(Locale locale, Model model) {
        Instant now = clock.instant();
        Words words = pageWords.in(locale);
        List<SilentTest> all = silent.list();
        model.addAttribute("open", lines(all, false, now, words));
        model.addAttribute("over", lines(all, true, now, words));
        model.addAttribute(
                "remindable",
                all.stream().filter(s -> s.step() == SilentTest.Step.REMIND).count());
        model.addAttribute("unexamined", silent.notExamined());
        model.addAttribute("zone", words.zone().getId());
        return "not-heard-from";
    }

    private static List<SilentLine> lines(List<SilentTest> all, boolean over, Instant now, Words words) {
        return all.stream()
                .filter(s -> over == (s.step() == SilentTest.Step.OVER))
                .map(s -> SilentLine.of(s, now, words))
                .toList();
    }

    @PostMapping("/not-heard-from/remind")
    String lookFirst(@RequestParam(defaultValue = "") List<String> tests, Model model) {
        List<Shown> letters = reminding.drafts(keys(tests)).stream()
                .map(d -> new Shown(
                        d.test().key().toString(), d.test().appointment().fullName(), d.to(), d.text()))
                .toList();
        model.addAttribute("letters", letters);
        return "remind";
    }

    @PostMapping("/not-heard-from/remind/confirm")
    String send(
            @RequestParam(defaultValue = "") List<String> tests,
            Principal who,
            Locale locale,
            RedirectAttributes flash) {
        Map<TestKey, Reminding.Outcome> results = reminding.remind(person.of(who), keys(tests));
        long sent =
                results.values().stream().filter(o -> o.letter().isPresent()).count();
        flash.addFlashAttribute("done", pageWords.in(locale).say("silent.sent", sent));
        List<String> refused = results.values().stream()
                .filter(o -> o.letter().isEmpty())
                .map(Reminding.Outcome::words)
                .toList();
        if (!refused.isEmpty()) {
            flash.addFlashAttribute("problem", String.join(" ", refused));
        }
        return BACK;
    }

    /** The time is a wall time of the clinic; left empty, what the book says stands. */
    @PostMapping("/not-heard-from/observed")
    String observed(
            @RequestParam String test,
            @RequestParam(defaultValue = "") String timer,
            @RequestParam(defaultValue = "unstated") String observed,
            @RequestParam(defaultValue = "") String mark,
            Principal who,
            Locale locale,
            RedirectAttributes flash) {
        Words words = pageWords.in(locale);
        Optional<OffsetDateTime> began = timer.isBlank()
                ? Optional.empty()
                : WallTime.only(timer, words.zone()).map(ZonedDateTime::toOffsetDateTime);
        if (began.isEmpty() && !timer.isBlank()) {
            flash.addFlashAttribute("problem", words.say("silent.no-such-time"));
            return BACK;
        }
        Observation observation = new Observation(
                key(test), began, observed(observed), Optional.of(mark.strip()).filter(m -> !m.isEmpty()));
        Observing.Entry entry = observing.record(person.of(who), observation);
        if (entry instanceof Observing.Entry.Forbidden) {
            throw new ResponseStatusException(HttpStatus.FORBIDDEN);
        }
        if (entry instanceof Observing.Entry.Refused refused) {
            flash.addFlashAttribute("problem", refused.words());
        } else {
            flash.addFlashAttribute("assessed", ((Observing.Entry.Made) entry).assessedAgain());
        }
        return BACK;
    }

    private static Observed observed(String said) {
        return switch (said) {
            case "yes" -> Observed.YES;
            case "no" -> Observed.NO;
            default -> Observed.UNSTATED;
        };
    }

    private static List<TestKey> keys(List<String> written) {
        return written.stream().limit(MOST).map(NotHeardController::key).toList();
    }

    private static TestKey key(String written) {
        String[] parts = written.split("#", 2);
        try {
            return new TestKey(parts[0], parts.length == 2 ? Integer.parseInt(parts[1]) : 1);
        } catch (NumberFormatException e) {
            throw new ResponseStatusException(HttpStatus.BAD_REQUEST, "That is no test.", e);
        }
    }
}
