package org.tidegate.examination.timing;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tidegate.finding.Event;
import org.tidegate.finding.WindowVerdict;
import org.tidegate.finding.WindowVerdict.DerivationStep;
import org.tidegate.rules.EnclosureTexts;
import org.tidegate.rules.Template;

/** What follows from the clocks, in a participant's language: each verdict, then the figures that prove it. */
record EnclosureVerdicts(EnclosureTexts.Verdicts texts, TimeJudgement judgement) {

    /** A verdict with the sentences that tell its figures. */
    record Said(String verdict, List<String> figures) {}

    List<Said> told() {
        List<Said> all = new ArrayList<>();
        judgement.photo().ifPresent(v -> {
            List<String> figures =
                    figures(v, texts.photoAtLeast(), texts.photoAtMost(), Optional.of(texts.photoBefore()));
            judgement.phoneClock().ifPresent(c -> figures.add(phone(c)));
            all.add(new Said(photo(v).text(), figures));
        });
        all.add(new Said(
                sent().text(), figures(judgement.sent(), texts.mailAtLeast(), texts.mailAtMost(), Optional.empty())));
        return all;
    }

    private Template photo(WindowVerdict v) {
        return switch (v.verdict()) {
            case INSIDE -> texts.photoInside();
            case UNDETERMINED -> texts.photoOpen();
            case OUTSIDE ->
                switch (judgement.side().orElse(TimeJudgement.Side.LATE)) {
                    case BEFORE_TEST -> texts.photoBeforeTest();
                    case EARLY -> texts.photoEarly();
                    case LATE -> texts.photoLate();
                };
        };
    }

    private Template sent() {
        if (judgement.outage()) {
            return texts.sentOutage();
        }
        return switch (judgement.sent().verdict()) {
            case INSIDE -> texts.sentInside();
            case OUTSIDE -> texts.sentLate();
            case UNDETERMINED -> judgement.sentSoftened() ? texts.sentInTransit() : texts.sentOpen();
        };
    }

    /**
     * The conclusions that count from the test; others, such as from a slot's end, stand in the rule. None where the clocks contradict each
     * other in several ways.
     */
    private static List<String> figures(WindowVerdict v, Template atLeast, Template atMost, Optional<Template> before) {
        List<String> figures = new ArrayList<>();
        if (v.derivation().stream().anyMatch(s -> s.clue().equals(Telling.ALTERNATIVE))) {
            return figures;
        }
        for (DerivationStep step : v.derivation()) {
            boolean upper = step.from().equals(Event.TEST);
            if (!step.clue().equals(Telling.CONCLUSION) || !(upper || step.to().equals(Event.TEST))) {
                continue;
            }
            Duration after = upper ? step.bound() : step.bound().negated();
            if (!after.isNegative()) {
                figures.add(fill(upper ? atMost : atLeast, after));
            } else if (upper) {
                before.map(t -> fill(t, after)).ifPresent(figures::add);
            }
        }
        return figures;
    }

    private String phone(TimeJudgement.PhoneClockError error) {
        Duration near = (error.fast() ? error.least() : error.most()).orElse(Duration.ZERO);
        return fill(error.fast() ? texts.phoneFast() : texts.phoneSlow(), near);
    }

    private static String fill(Template template, Duration span) {
        return template.fill(Map.of("span", Wording.span(span)));
    }
}
