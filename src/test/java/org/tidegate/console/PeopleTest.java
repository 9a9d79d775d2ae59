package org.tidegate.console;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;
import org.tidegate.Needs;
import org.tidegate.rules.Rules;
import org.tidegate.work.OutboxLetter;
import org.tidegate.work.SubmissionId;

/** Several people at real browsers: two operators at one submission, an auditor, and one who must be helped first. */
@Tag("browser")
class PeopleTest {

    @TempDir
    static Path data;

    private static Morning morning;
    private static Browser first;
    private static Browser second;
    private static Keyboard anna;
    private static Keyboard operator;

    @BeforeAll
    static void start() throws Exception {
        Needs.that(Browser.installed(), "chromium and chromedriver");
        morning = Morning.until(data, Instant.parse("2026-05-04T09:02:00Z"), "24-", "25-", "32-", "40-");
        first = Browser.open(morning.console.address(), true);
        second = Browser.open(morning.console.address(), true);
        anna = new Keyboard(first);
        operator = new Keyboard(second);
        anna.signIn("anna");
        operator.signIn("operator");
    }

    @AfterAll
    static void stop() {
        if (morning != null) {
            first.close();
            second.close();
            morning.close();
        }
    }

    @Test
    void whoComesSecondIsToldAndNobodyIsAnsweredTwice() {
        SubmissionId id = of("SS-T3V7");
        first.go("submissions/" + id.value());
        second.go("submissions/" + id.value());
        anna.turn("s");
        operator.turn("s");
        assertThat(anna.texts(".outcome .done")).singleElement().asString().contains("goes out soon");
        assertThat(operator.texts(".outcome .alert")).singleElement().asString().contains("Nothing was done");
        assertThat(operator.sees("#send")).isFalse();
        assertThat(letters(id)).hasSize(1);
    }

    @Test
    void whoHasTakenItUpIsNotCrossed() {
        SubmissionId id = of("SS-K5M9");
        second.go("submissions/" + id.value());
        first.go("submissions/" + id.value());
        anna.turn("c");
        operator.turn("s");
        assertThat(operator.texts(".outcome .alert")).singleElement().asString().contains("anna");
        assertThat(letters(id)).isEmpty();
        second.go("queue");
        assertThat(operator.texts("#s-" + id.value() + " .claimed"))
                .singleElement()
                .asString()
                .contains("anna");
        anna.turn("c");
    }

    @Test
    void anAuditorSeesAndChangesNothing() {
        long before = ledger();
        try (Browser browser = Browser.open(morning.console.address(), true)) {
            Keyboard auditor = new Keyboard(browser);
            auditor.signIn("auditor");
            before += 1;
            browser.go("submissions/" + of("SS-R8L3").value());
            assertThat(auditor.texts(".lead")).singleElement().asString().contains("SS-R8L3");
            assertThat(auditor.texts("form:not([method=dialog])"))
                    .as("leaving, and nothing else")
                    .hasSize(1);
            auditor.press("s", "v", "c", "d", "a", "r", "z");
            assertThat(auditor.texts(".lead")).singleElement().asString().contains("SS-R8L3");
            for (String closed : List.of("queue", "outbox", "registers", "horizon", "not-heard-from")) {
                browser.go(closed);
                assertThat(auditor.sees("form[method=post]:not(.leave)"))
                        .as(closed)
                        .isFalse();
                assertThat(auditor.sees(".row")).as(closed).isFalse();
            }
        }
        assertThat(ledger()).isEqualTo(before);
    }

    @Test
    void aWorriedPersonStandsFirstAndIsAskedForNoPhoto() {
        SubmissionId id = of("SS-J3B7");
        first.go("queue");
        assertThat(anna.texts(".lane h2").get(0)).startsWith("Urgent");
        anna.press("j");
        assertThat(anna.focused().getText()).isEqualTo("Rory Kinlochan");
        anna.turn(Keys.ENTER);
        assertThat(anna.sees(".urgent-band")).isTrue();
        anna.turn("s");
        assertThat(letters(id))
                .singleElement()
                .satisfies(l -> assertThat(l.text().orElseThrow().text())
                        .contains(
                                "A person will call you",
                                Rules.bundled().service().urgentNumber())
                        .doesNotContainIgnoringCase("photo")
                        .doesNotContainIgnoringCase("cassette"));
    }

    private static SubmissionId of(String ref) {
        return morning.desk.casebook().find(ref).get(0);
    }

    private static List<OutboxLetter> letters(SubmissionId id) {
        return morning.desk.outbox().of(id);
    }

    private static long ledger() {
        return morning.desk.store().<Long>read(tx -> tx.ledger().size());
    }
}
