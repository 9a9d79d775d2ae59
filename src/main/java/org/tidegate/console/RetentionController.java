package org.tidegate.console;

import java.security.Principal;
import java.time.Clock;
import java.time.Instant;
import java.time.Period;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.server.ResponseStatusException;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import org.tidegate.casework.Retaining;
import org.tidegate.casework.Retaining.Need;
import org.tidegate.casework.Retaining.Outcome;
import org.tidegate.casework.Retaining.Stock;
import org.tidegate.casework.Retaining.Why;
import org.tidegate.rules.RetentionRules;
import org.tidegate.rules.Rules;
import org.tidegate.work.SubmissionId;

/** What is kept and until when: for the data protection officer alone. */
@Controller
class RetentionController {

    private static final String BACK = "redirect:/retention";

    private final Retaining retaining;
    private final Rules rules;
    private final Person person;
    private final Clock clock;
    private final PageWords pageWords;

    RetentionController(Retaining retaining, Rules rules, Person person, Clock clock, PageWords pageWords) {
        this.retaining = retaining;
        this.rules = rules;
        this.person = person;
        this.clock = clock;
        this.pageWords = pageWords;
    }

    /**
     * A row of the terms.
     *
     * @param term its key in the words
     * @param kept how much there is of it
     */
    record Kept(String term, String period, int kept) {}

    record Week(String from, String until, int messages) {}

    record Held(long id, String number, String reason, String since) {}

    record Overdue(long id, String number) {}

    @GetMapping("/retention")
    String page(Locale locale, Model model) {
        Instant now = clock.instant();
        Words words = pageWords.in(locale);
        Stock stock = retaining.stock();
        model.addAttribute("kept", kept(stock, words));
        model.addAttribute("messages", stock.counts().messages());
        model.addAttribute("forgotten", stock.counts().forgotten());
        model.addAttribute(
                "weeks",
                stock.weeks().stream()
                        .map(w -> new Week(words.dateAndTime(w.from()), words.dateAndTime(w.until()), w.messages()))
                        .toList());
        model.addAttribute(
                "overdue",
                stock.overdue().stream()
                        .map(id -> new Overdue(id.value(), id.toString()))
                        .toList());
        model.addAttribute(
                "holds",
                stock.holds().stream()
                        .map(h -> new Held(
                                h.submission().value(),
                                h.submission().toString(),
                                words.say("retention." + h.reasonCode()),
                                words.both(h.since(), now) + " · " + h.who().value()))
                        .toList());
        return "retention";
    }

    private List<Kept> kept(Stock stock, Words words) {
        RetentionRules terms = rules.retention();
        return List.of(
                new Kept(
                        "identity",
                        words(terms.identityPictures(), words),
                        stock.counts().identity()),
                new Kept(
                        "pictures",
                        words(terms.pictures(), words),
                        stock.counts().photos()),
                new Kept(
                        "cassettes",
                        words(terms.cassettes(), words),
                        stock.counts().cassettes()),
                new Kept("aside", words(terms.aside(), words), stock.counts().aside()),
                new Kept(
                        "messages",
                        words(terms.messages(), words),
                        stock.counts().cases()),
                new Kept(
                        "fingerprints",
                        words(terms.fingerprints(), words),
                        stock.counts().fingerprints()),
                new Kept(
                        "results", words(terms.results(), words), stock.counts().results()));
    }

    private static String words(Period term, Words words) {
        return Stream.of(
                        part("retention.years", term.getYears(), words),
                        part("retention.months", term.getMonths(), words),
                        part("retention.days", term.getDays(), words))
                .flatMap(Optional::stream)
                .collect(Collectors.joining(" "));
    }

    private static Optional<String> part(String key, int amount, Words words) {
        return amount == 0 ? Optional.empty() : Optional.of(words.say(key, amount));
    }

    /** @param sure ticked by who has read what forgetting means */
    @PostMapping("/retention/forget")
    String forget(
            @RequestParam String number,
            @RequestParam String why,
            @RequestParam(defaultValue = "false") boolean sure,
            Principal who,
            Locale locale,
            RedirectAttributes flash) {
        Words words = pageWords.in(locale);
        Why reason = one(Why.values(), Why::code, why);
        if (!sure) {
            flash.addFlashAttribute("problem", words.say("retention.not-sure"));
            return BACK;
        }
        return after(
                retaining.forget(person.of(who), number(number), reason), "retention.done.forgotten", words, flash);
    }

    @PostMapping("/retention/holds")
    String holdBack(
            @RequestParam String number,
            @RequestParam String need,
            Principal who,
            Locale locale,
            RedirectAttributes flash) {
        Need reason = one(Need.values(), Need::code, need);
        return after(
                retaining.holdBack(person.of(who), number(number), reason),
                "retention.done.held",
                pageWords.in(locale),
                flash);
    }

    @PostMapping("/retention/holds/lift")
    String lift(@RequestParam String number, Principal who, Locale locale, RedirectAttributes flash) {
        return after(
                retaining.lift(person.of(who), number(number)), "retention.done.lifted", pageWords.in(locale), flash);
    }

    private static String after(Outcome outcome, String key, Words words, RedirectAttributes flash) {
        if (outcome instanceof Outcome.Forbidden) {
            throw new ResponseStatusException(HttpStatus.FORBIDDEN);
        }
        if (outcome instanceof Outcome.Done done) {
            String about = String.join(
                    ", ", done.about().stream().map(SubmissionId::toString).toList());
            flash.addFlashAttribute("done", words.say(key, about));
        } else {
            flash.addFlashAttribute("problem", ((Outcome.Refused) outcome).words());
        }
        return BACK;
    }

    private static SubmissionId number(String written) {
        return SubmissionId.parse(written.strip()).orElseThrow(() -> bad("That is no number of a submission."));
    }

    private static <T> T one(T[] all, Function<T, String> code, String wanted) {
        return Arrays.stream(all)
                .filter(t -> code.apply(t).equals(wanted))
                .findFirst()
                .orElseThrow(() -> bad("No such reason."));
    }

    private static ResponseStatusException bad(String words) {
        return new ResponseStatusException(HttpStatus.BAD_REQUEST, words);
    }
}
