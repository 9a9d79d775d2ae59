package org.tidegate.casework;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tidegate.casework.Policy.Decision;
import org.tidegate.finding.DiscrepancyCode;
import org.tidegate.rules.Rules;
import org.tidegate.rules.UnattendedRules;
import org.tidegate.work.LeftReason;

/** Every condition of {@code unattended.yaml}, met and just not met. */
class PolicyTest {

    private static final UnattendedRules LIVE = Rules.bundled().unattended();

    /** Flags: u urgent once, o over (does not count any more), d no DMARC pass, t free text, w written to before, p promise passed. */
    @ParameterizedTest(name = "{0} [{1}] → {2}")
    @CsvSource(delimiter = ';', textBlock = """
            -                          ; -  ; acknowledge
            no-id                      ; -  ; ask
            no-photo                   ; -  ; ask
            no-cassette no-id          ; -  ; ask
            read-early                 ; -  ; ask
            format-unsupported         ; -  ; ask
            no-id                      ; w  ; ask
            no-id                      ; p  ; ask
            no-id                      ; o  ; leave too-late needs-a-person
            late                       ; -  ; acknowledge judged
            no-id late                 ; -  ; leave judged needs-a-person
            time-undetermined          ; -  ; acknowledge judged
            subject-unreadable         ; -  ; acknowledge judged
            urgent-words               ; -  ; leave needs-a-person
            urgent-words no-photo      ; -  ; leave needs-a-person
            no-photo                   ; u  ; leave needs-a-person
            -                          ; u  ; leave needs-a-person
            correspondence             ; -  ; leave needs-a-person
            photo-reused               ; -  ; leave needs-a-person
            attachment-unsafe          ; -  ; leave needs-a-person
            sender-not-authenticated   ; d  ; leave needs-a-person not-authenticated
            no-id                      ; d  ; leave not-authenticated
            no-id                      ; t  ; leave free-text
            -                          ; dt ; leave not-authenticated free-text
            -                          ; w  ; leave answered-before
            -                          ; p  ; leave promise-passed
            late                       ; w  ; leave judged answered-before
            """)
    void decides(String holds, String flags, String expected) {
        assertThat(told(new Policy(LIVE).decide(facts(holds, flags, Optional.empty(), 0))))
                .isEqualTo(expected);
    }

    @Test
    void writesNothingWhereNobodyMayBeWrittenTo() {
        for (LeftReason refused : Set.of(LeftReason.NO_ADDRESS, LeftReason.NOT_A_PERSON, LeftReason.TOO_MANY)) {
            assertThat(told(new Policy(LIVE).decide(facts("no-id", "", Optional.of(refused), 0))))
                    .isEqualTo("leave " + refused.code());
        }
    }

    @Test
    void stopsAtItsOwnCap() {
        int cap = LIVE.lettersPerAddress();
        assertThat(told(new Policy(LIVE).decide(facts("no-id", "", Optional.empty(), cap - 1))))
                .isEqualTo("ask");
        assertThat(told(new Policy(LIVE).decide(facts("no-id", "", Optional.empty(), cap))))
                .isEqualTo("leave too-many");
    }

    @Test
    void canBeTurnedOffPieceByPiece() {
        assertThat(told(new Policy(with(false, true)).decide(facts("-", "", Optional.empty(), 0))))
                .isEqualTo("leave turned-off");
        assertThat(told(new Policy(with(true, false)).decide(facts("no-id", "", Optional.empty(), 0))))
                .isEqualTo("leave turned-off needs-a-person");
        assertThat(told(new Policy(with(true, false)).decide(facts("late", "", Optional.empty(), 0))))
                .isEqualTo("acknowledge turned-off");
    }

    private static UnattendedRules with(boolean acknowledge, boolean ask) {
        return new UnattendedRules(
                acknowledge,
                ask,
                LIVE.askFor(),
                LIVE.leaveToPeople(),
                LIVE.lettersPerAddress(),
                LIVE.requireDmarcPass(),
                LIVE.requireCoveringNote(),
                LIVE.wakeFor());
    }

    private static Policy.Facts facts(String holds, String flags, Optional<LeftReason> refused, int letters) {
        List<DiscrepancyCode> codes = Arrays.stream(holds.split(" "))
                .flatMap(c -> DiscrepancyCode.ofCode(c).stream())
                .toList();
        return new Policy.Facts(
                flags.contains("u"),
                codes,
                !flags.contains("o"),
                !flags.contains("d"),
                !flags.contains("t"),
                refused,
                letters,
                flags.contains("w"),
                !flags.contains("p"));
    }

    private static String told(Decision decision) {
        List<LeftReason> why = decision instanceof Decision.Leave l
                ? l.why()
                : decision instanceof Decision.Acknowledge a ? a.notAsked() : List.of();
        return (decision.getClass().getSimpleName().toLowerCase(Locale.ROOT) + " "
                        + why.stream().map(LeftReason::code).collect(Collectors.joining(" ")))
                .strip();
    }
}
