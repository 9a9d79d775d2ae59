package org.tidegate.rules;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.tidegate.finding.DiscrepancyCode;

/** What the texts of a language must never or always do. */
final class TextChecks {

    /** Nothing that tells who it is or what ails them. */
    private static final List<String> NOTICE =
            List.of("link", "needed_by", "received", "ref", "service", "shift_start", "urgent_number");

    private final Rules rules;
    private final Faults faults;

    private TextChecks(Rules rules, Faults faults) {
        this.rules = rules;
        this.faults = faults;
    }

    static void check(Rules rules, Faults faults) {
        TextChecks checks = new TextChecks(rules, faults);
        if (rules.texts().byLanguage().isEmpty()) {
            faults.file("service.yaml", "there is no language", "languages: [en]");
        }
        rules.texts().byLanguage().values().forEach(checks::language);
        rules.hours()
                .onCall()
                .ifPresent(o -> Stream.of(o.urgent(), o.embarkation()).forEach(checks::notice));
    }

    /** A notice goes through mail that is not ours alone. */
    private void notice(HourRules.Notice notice) {
        Stream.concat(Stream.of(notice.subject()), notice.paragraphs().stream())
                .flatMap(t -> t.placeholders().stream())
                .filter(p -> !NOTICE.contains(p))
                .distinct()
                .forEach(p -> faults.in(
                        notice, "{" + p + "} does not stand in a notice", "only " + String.join(", ", NOTICE)));
    }

    private void language(LetterTexts texts) {
        everyDiscrepancyHasWords(texts);
        new SubjectChecks(rules.subjects().resultWords(), faults).check(texts);
        new BlockChecks(texts, faults).check();
    }

    private void everyDiscrepancyHasWords(LetterTexts texts) {
        Set<DiscrepancyCode> missing = EnumSet.allOf(DiscrepancyCode.class);
        missing.remove(DiscrepancyCode.NOT_A_SUBMISSION); // never answered
        missing.removeAll(texts.discrepancies().keySet());
        missing.forEach(c -> faults.in(texts, "no wording for " + c.code(), "add it under discrepancies"));
    }
}
