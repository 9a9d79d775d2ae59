package org.tidegate.console;

import java.security.Principal;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Locale;
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
import org.tidegate.booking.TestRecord;
import org.tidegate.booking.TestRecord.Observed;
import org.tidegate.casework.Repeating;
import org.tidegate.casework.Repeating.Note;
import org.tidegate.casework.Repeating.Outcome;
import org.tidegate.examination.timing.TestWindows;
import org.tidegate.examination.timing.TimeJudgement.ClockTimes;
import org.tidegate.rules.Rules;

/** A test done again on a second kit: what is recorded of each attempt, and the record of the next one. */
@Controller
class RepeatController {

    private final Repeating repeating;
    private final Rules rules;
    private final Person person;
    private final PageWords pageWords;

    RepeatController(Repeating repeating, Rules rules, Person person, PageWords pageWords) {
        this.repeating = repeating;
        this.rules = rules;
        this.person = person;
        this.pageWords = pageWords;
    }

    /**
     * One attempt in words.
     *
     * @param windows the clock times to tell the person; empty where the timer or the kit's windows are not known
     */
    record Attempt(String key, String kit, String timer, String mark, String windows) {}

    @GetMapping("/repeat")
    String form(@RequestParam String test, Locale locale, Model model) {
        List<TestRecord> attempts = repeating.attempts(key(test).ref());
        if (attempts.isEmpty()) {
            throw new ResponseStatusException(HttpStatus.NOT_FOUND);
        }
        Words words = pageWords.in(locale);
        TestRecord last = attempts.get(attempts.size() - 1);
        model.addAttribute("name", last.appointment().fullName());
        model.addAttribute("ref", last.appointment().ref());
        model.addAttribute(
                "attempts", attempts.stream().map(t -> line(t, words)).toList());
        model.addAttribute("last", last.key().toString());
        model.addAttribute("next", last.attempt() + 1);
        model.addAttribute("kit", last.kit());
        model.addAttribute("zone", words.zone().getId());
        return "repeat";
    }

    private Attempt line(TestRecord t, Words words) {
        String timer = t.timerStart()
                .map(s -> words.say("page.timer", words.dateAndTime(s.toInstant())))
                .orElse("");
        String windows = rules.protocol(t.kit())
                .map(p -> TestWindows.of(t, p, rules.timing()))
                .filter(TestWindows::timed)
                .map(w -> windows(w.earliest(), words))
                .orElse("");
        return new Attempt(
                t.key().toString(),
                t.kit() + t.lot().map(l -> " " + l).orElse(""),
                timer,
                t.mark().map(m -> words.say("page.mark", m)).orElse(""),
                windows);
    }

    private static String windows(ClockTimes times, Words words) {
        return words.say(
                "silent.windows", words.clock(times.from()), words.clock(times.until()), words.clock(times.sendBy()));
    }

    /** @param timer wall time of the clinic */
    @PostMapping("/repeat")
    String record(
            @RequestParam String test,
            @RequestParam(defaultValue = "") String kit,
            @RequestParam(defaultValue = "") String lot,
            @RequestParam String timer,
            @RequestParam(defaultValue = "unstated") String observed,
            @RequestParam(defaultValue = "") String mark,
            Principal who,
            Locale locale,
            RedirectAttributes flash) {
        Words words = pageWords.in(locale);
        Optional<ZonedDateTime> began = WallTime.only(timer, words.zone());
        if (began.isEmpty()) {
            flash.addFlashAttribute("problem", words.say("repeat.no-such-time"));
        } else {
            Note note = new Note(
                    key(test), kit.strip(), text(lot), began.get().toOffsetDateTime(), observed(observed), text(mark));
            tell(repeating.record(person.of(who), note), words, flash);
        }
        flash.addAttribute("test", key(test).toString());
        return "redirect:/repeat";
    }

    private static void tell(Outcome outcome, Words words, RedirectAttributes flash) {
        if (outcome instanceof Outcome.Forbidden) {
            throw new ResponseStatusException(HttpStatus.FORBIDDEN);
        }
        if (outcome instanceof Outcome.Made made) {
            flash.addFlashAttribute("done", words.say("repeat.made", made.test().toString()));
        } else {
            flash.addFlashAttribute("problem", ((Outcome.Refused) outcome).words());
        }
    }

    private static Optional<String> text(String written) {
        return Optional.of(written.strip()).filter(t -> !t.isEmpty());
    }

    private static Observed observed(String said) {
        return switch (said) {
            case "yes" -> Observed.YES;
            case "no" -> Observed.NO;
            default -> Observed.UNSTATED;
        };
    }

    private static TestKey key(String written) {
        return TestKey.parse(written)
                .orElseThrow(
                        () -> new ResponseStatusException(HttpStatus.BAD_REQUEST, "That is no reference of a test."));
    }
}
