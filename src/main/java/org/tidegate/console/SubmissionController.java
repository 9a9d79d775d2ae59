package org.tidegate.console;

import java.security.Principal;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.server.ResponseStatusException;
import org.tidegate.casework.Casebook;
import org.tidegate.casework.Drawings;
import org.tidegate.casework.ReadingDesk;
import org.tidegate.casework.Replying;
import org.tidegate.casework.SubmissionView;
import org.tidegate.examination.timing.TimeDrawing;
import org.tidegate.rules.Rules;
import org.tidegate.work.Ending;
import org.tidegate.work.Reading;
import org.tidegate.work.SubmissionId;

/** The page of one submission, and finding it. */
@Controller
class SubmissionController {

    private final Casebook casebook;
    private final Replying replying;
    private final ReadingDesk readingDesk;
    private final Drawings drawings;
    private final Person person;
    private final Rules rules;
    private final Clock clock;
    private final PageWords pageWords;

    SubmissionController(
            Casebook casebook,
            Replying replying,
            ReadingDesk readingDesk,
            Drawings drawings,
            Person person,
            Rules rules,
            Clock clock,
            PageWords pageWords) {
        this.casebook = casebook;
        this.replying = replying;
        this.readingDesk = readingDesk;
        this.drawings = drawings;
        this.person = person;
        this.rules = rules;
        this.clock = clock;
        this.pageWords = pageWords;
    }

    /** @param language of the reply to be written; empty for the participant's own */
    @GetMapping("/submissions/{id}")
    String submission(
            @PathVariable long id,
            @RequestParam(defaultValue = "") String language,
            Principal who,
            Locale locale,
            Model model) {
        Instant now = clock.instant();
        SubmissionId submission = new SubmissionId(id);
        SubmissionView view = casebook.submission(submission, now)
                .orElseThrow(() -> new ResponseStatusException(HttpStatus.NOT_FOUND));
        Person.May may = person.may(who);
        Optional<Replying.Draft> draft = may.triage()
                ? replying.draft(submission, language.isEmpty() ? Optional.empty() : Optional.of(language))
                : Optional.empty();
        String drawing = drawings.of(submission).map(TimeDrawing::text).orElse("");
        model.addAttribute("page", SubmissionPage.of(view, draft, drawing, who.getName(), now, pageWords.in(locale)));
        model.addAttribute("may", may);
        model.addAttribute("reasons", rules.roles().reasons());
        List<Reading> readings = visible(submission, who, may);
        model.addAttribute("readings", readings);
        Proposal proposal = new Proposal(rules.pictures(), pageWords.in(locale));
        model.addAttribute("proposed", proposal.after(readings, who.getName(), view));
        model.addAttribute("repeat", view.test().map(t -> t.key().toString()).orElse(""));
        model.addAttribute("invalid", needsRepeat(view, readings));
        return "submission";
    }

    /** Whether a second kit is due: nobody learns of an invalid reading here who may not see it. */
    private static boolean needsRepeat(SubmissionView view, List<Reading> readings) {
        boolean invalid = readings.stream()
                .reduce((a, b) -> b)
                .filter(r -> r.outcome() == Reading.Outcome.INVALID)
                .isPresent();
        return invalid || view.endings().stream().anyMatch(e -> e.kind() == Ending.Kind.REPEAT);
    }

    /** Blind to others until one has read: readings show to who has recorded one, and to who does not read. */
    private List<Reading> visible(SubmissionId id, Principal who, Person.May may) {
        List<Reading> all = readingDesk.readings(id);
        boolean own = all.stream().anyMatch(r -> r.who().value().equals(who.getName()));
        return own || !may.read() ? all : List.of();
    }

    /** One submission by its number or its test's reference. */
    @GetMapping("/find")
    String find(@RequestParam(defaultValue = "") String words, Model model) {
        List<SubmissionId> found = words.isBlank() ? List.of() : casebook.find(words.strip());
        if (found.size() == 1) {
            return "redirect:/submissions/" + found.get(0).value();
        }
        model.addAttribute("words", words);
        model.addAttribute("found", found);
        return "find";
    }
}
