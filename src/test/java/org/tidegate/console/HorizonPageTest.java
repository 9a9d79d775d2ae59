package org.tidegate.console;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tidegate.work.LetterKind;
import org.tidegate.work.OutboxState;

/** The outlook and the tests not heard from, from the page to the letter. */
class HorizonPageTest {

    private static final Pattern TICKET = Pattern.compile("name=\"tickets\" value=\"([0-9.]+)\"");

    @TempDir
    static Path data;

    private static Morning morning;
    private static Visitor anna;

    @BeforeAll
    static void start() throws Exception {
        morning = Morning.until(data, Instant.parse("2026-05-04T09:02:00Z"), "24-", "25-", "32-", "40-");
        anna = Visitor.signedIn(morning, "anna");
    }

    @AfterAll
    static void stop() {
        morning.close();
    }

    @Test
    void whoHasAPageOpenIsReckonedWith() throws Exception {
        assertThat(anna.get("horizon").body()).contains("People at work (1 have a page open)");
        Visitor.signedIn(morning, "operator").get("queue");
        Visitor.signedIn(morning, "auditor").get("find");
        assertThat(anna.get("horizon").body()).contains("(2 have a page open)");
    }

    @Test
    void withNobodyNothingIsClearAndNoTimeIsPromised() throws Exception {
        String page = anna.get("horizon?people=0").body();
        assertThat(page).contains("It is not clear before");
        assertThat(page).doesNotContain("Look at the letters with honest");
    }

    @Test
    void nonsenseIsNoError() throws Exception {
        assertThat(anna.get("horizon?people=-3").statusCode()).isEqualTo(200);
        assertThat(anna.get("horizon?people=99999").statusCode()).isEqualTo(200);
        assertThat(anna.get("horizon?people=many").statusCode()).isEqualTo(400);
        assertThat(anna.post("horizon/new-times/confirm", Map.of("tickets", "1.x.3"))
                        .statusCode())
                .isEqualTo(400);
        assertThat(anna.post("not-heard-from/observed", Map.of("test", "SS-N2D6", "timer", "soon"))
                        .statusCode())
                .isEqualTo(400);
    }

    @Test
    void aTimerInTheHourThatComesTwiceOrNotAtAllIsAskedForAgain() throws Exception {
        for (String unclear : new String[] {"2025-10-26T01:30", "2026-03-29T01:30"}) {
            anna.post("not-heard-from/observed", Map.of("test", "SS-N2D6", "timer", unclear));
            assertThat(anna.get("not-heard-from").body()).as(unclear).contains("the clocks change");
        }
        assertThat(morning.desk
                        .store()
                        .<Integer>read(tx -> tx.observations().newest().size()))
                .isZero();
    }

    @Test
    void honestTimesAreLookedAtAndThenTold() throws Exception {
        HttpResponse<String> look = anna.post("horizon/new-times", Map.of("people", "1"));
        Matcher ticket = TICKET.matcher(look.body());
        assertThat(ticket.find()).as(look.body()).isTrue();
        assertThat(look.body()).doesNotContain("Rory");
        anna.post("horizon/new-times/confirm", Map.of("tickets", ticket.group(1)));
        anna.post("horizon/new-times/confirm", Map.of("tickets", ticket.group(1)));
        assertThat(morning.desk.outbox().inState(OutboxState.WAITING).stream()
                        .filter(l -> l.kind() == LetterKind.NEW_TIME))
                .hasSize(1);
    }

    @Test
    void aReminderIsOneClickAndGoesOnce() throws Exception {
        assertThat(anna.get("not-heard-from").body()).contains("SS-Q6J1");
        anna.post("not-heard-from/remind/confirm", Map.of("tests", "SS-Q6J1"));
        anna.post("not-heard-from/remind/confirm", Map.of("tests", "SS-Q6J1"));
        assertThat(morning.desk.outbox().inState(OutboxState.WAITING).stream()
                        .filter(l -> l.kind() == LetterKind.REMINDER))
                .hasSize(1);
        assertThat(anna.get("not-heard-from").body()).contains("Reminder written");
    }
}
