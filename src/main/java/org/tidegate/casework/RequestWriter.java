package org.tidegate.casework;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.tidegate.finding.Discrepancy;
import org.tidegate.finding.DiscrepancyCode;
import org.tidegate.finding.Severity;
import org.tidegate.rules.LetterTexts;
import org.tidegate.rules.Rules;
import org.tidegate.rules.Template;
import org.tidegate.rules.Wording;
import org.tidegate.work.SuggestedReply;

/** Merges all discrepancies that hold a submission into one letter in the participant's language. */
final class RequestWriter {

    private final Rules rules;

    RequestWriter(Rules rules) {
        this.rules = rules;
    }

    /** Empty where nothing holds it, where nobody must be answered, or where a text cannot be filled without a hole. */
    Optional<SuggestedReply> suggest(Matter matter, Instant now) {
        List<Discrepancy> holds = matter.assessment().discrepancies().stream()
                .filter(d -> d.severity() == Severity.HOLD)
                .toList();
        return suggest(matter, holds, matter.language(), now);
    }

    /**
     * As {@link #suggest(Matter, Instant)}, about these alone.
     *
     * @param asked BCP 47; another one serves where there are no texts in it
     */
    Optional<SuggestedReply> suggest(Matter matter, List<Discrepancy> all, String asked, Instant now) {
        List<Discrepancy> holds = told(all);
        if (holds.isEmpty()) {
            return Optional.empty();
        }
        String language = rules.texts().languageFor(asked);
        LetterTexts texts = rules.texts().forLanguage(language);
        Map<String, String> values = LetterValues.of(matter, rules);
        try {
            return Optional.of(new SuggestedReply(
                    matter.submission(),
                    matter.number(),
                    matter.test().flatMap(t -> t.appointment().email()),
                    language,
                    texts.request().subject().fill(values),
                    text(texts, holds, values, matter.deadlines(), now),
                    notAfter(holds, matter.deadlines(), now)));
        } catch (IllegalArgumentException holeInTheLetter) {
            return Optional.empty();
        }
    }

    /** Who is in distress is told about help, not asked for photos. */
    private static List<Discrepancy> told(List<Discrepancy> holds) {
        boolean urgent = holds.stream().anyMatch(d -> d.code() == DiscrepancyCode.URGENT_WORDS);
        boolean writesOnly = holds.stream().anyMatch(d -> d.code() == DiscrepancyCode.CORRESPONDENCE);
        return urgent && writesOnly
                ? holds.stream()
                        .filter(d -> d.code() == DiscrepancyCode.URGENT_WORDS)
                        .toList()
                : holds;
    }

    private String text(
            LetterTexts texts, List<Discrepancy> holds, Map<String, String> values, Deadlines deadlines, Instant now) {
        List<String> paragraphs = new ArrayList<>();
        paragraphs.add(texts.request().opening().fill(values));
        holds.forEach(d -> wording(texts, d).ifPresent(w -> paragraphs.add(paragraph(w, d, values, deadlines, now))));
        List<Discrepancy> late =
                holds.stream().filter(d -> tooLate(d, deadlines, now)).toList();
        boolean noNewPhoto = asking(late, texts, Wording::asksForNewPhoto);
        if (noNewPhoto) {
            paragraphs.add(texts.request().over().fill(values));
        }
        List<Discrepancy> open = holds.stream().filter(d -> !late.contains(d)).toList();
        if (!noNewPhoto || asking(open, texts, w -> w.please().isPresent())) {
            paragraphs.add(texts.request().ending().fill(values));
        }
        return LetterSheet.text(texts, values, paragraphs);
    }

    private boolean tooLate(Discrepancy d, Deadlines deadlines, Instant now) {
        return deadlines.correctBy(d, rules).filter(t -> !now.isBefore(t)).isPresent();
    }

    private static boolean asking(List<Discrepancy> about, LetterTexts texts, Predicate<Wording> what) {
        return about.stream().anyMatch(d -> wording(texts, d).filter(what).isPresent());
    }

    private static Optional<Wording> wording(LetterTexts texts, Discrepancy d) {
        return Optional.ofNullable(texts.discrepancies().get(d.code()));
    }

    /** In time: what to do and until when. Too late: nobody is asked for what would not count any more. */
    private String paragraph(
            Wording wording, Discrepancy d, Map<String, String> values, Deadlines deadlines, Instant now) {
        Map<String, String> own = new TreeMap<>(values);
        d.parameters().forEach(own::putIfAbsent);
        Optional<Instant> counts = deadlines.correctBy(d, rules);
        counts.ifPresent(t -> own.put("until", LetterValues.clock(t, rules)));
        boolean tooLate = tooLate(d, deadlines, now);
        List<Template> said = new ArrayList<>(List.of(wording.tell()));
        if (!tooLate) {
            wording.please().ifPresent(said::add);
            wording.until().filter(t -> counts.isPresent()).ifPresent(said::add);
        }
        if (!wording.asksForNewPhoto() || (counts.isPresent() && !tooLate)) {
            said.add(wording.otherwise());
        }
        return said.stream().map(t -> t.fill(own)).collect(Collectors.joining(" "));
    }

    /** When the first of the things that it asks for would come too late. */
    private Optional<Instant> notAfter(List<Discrepancy> holds, Deadlines deadlines, Instant now) {
        return holds.stream()
                .flatMap(d -> deadlines.correctBy(d, rules).stream())
                .filter(now::isBefore)
                .min(Comparator.naturalOrder());
    }
}
