package org.tidegate.console;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Base64;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tidegate.work.Role;
import org.tidegate.work.User;
import org.tidegate.work.UserId;

/** What an enemy may try: through mail, through addresses and forms, and at the door. */
class HostileTest {

    private static final Instant NOW = Instant.parse("2026-05-04T09:00:00Z");
    private static final String SCRIPT = "<script>alert(1)</script>";

    private static final String MAIL = """
            Received: from out.tarnpost.example (out.tarnpost.example [192.0.2.7]) by mx.skarrasound.example; Mon, 4 May 2026 09:50:00 +0100
            From: "=?UTF-8?B?%s?=" <eve@tarnpost.example>
            To: intake@skarrasound.example
            Subject: =?UTF-8?B?%s?=
            Date: Mon, 4 May 2026 09:49:50 +0100
            Message-ID: <hostile@tarnpost.example>
            MIME-Version: 1.0
            Content-Type: multipart/mixed; boundary=b

            --b
            Content-Type: text/html; charset=utf-8

            <p onclick="alert(2)">photo</p>%s<img src="http://tracker.example/x.png"><style>body{display:none}</style>
            --b
            Content-Type: image/png; name="=?UTF-8?B?%s?="
            Content-Transfer-Encoding: base64
            Content-Disposition: attachment; filename="=?UTF-8?B?%s?="

            iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==
            --b--
            """;

    @TempDir
    static Path data;

    private static Morning morning;
    private static Visitor operator;

    @BeforeAll
    static void start() throws Exception {
        morning = Morning.until(data, NOW, "32-");
        String script = Base64.getEncoder().encodeToString(SCRIPT.getBytes(StandardCharsets.UTF_8));
        String path = Base64.getEncoder()
                .encodeToString(("../../" + SCRIPT + "\r\nX-Evil: 1.png").getBytes(StandardCharsets.UTF_8));
        String mail = MAIL.formatted(script, script, SCRIPT, path, path).replace("\n", "\r\n");
        morning.desk.intake().take(mail.getBytes(StandardCharsets.US_ASCII), Optional.empty());
        morning.desk.worker().drain();
        operator = Visitor.signedIn(morning, Role.OPERATOR.code());
    }

    @AfterAll
    static void stop() {
        morning.close();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"queue", "queue?words=script", "submissions/2", "find?words=%3Cscript%3Ealert(1)%3C/script%3E"})
    void noScriptOfAMessageReachesAPage(String path) throws Exception {
        HttpResponse<String> page = operator.get(path);
        assertThat(page.statusCode()).isEqualTo(200);
        assertThat(page.body()).doesNotContain(SCRIPT, "onclick=\"alert", "tracker.example/x.png\"", "<style>");
        assertThat(page.headers().firstValue("Content-Security-Policy").orElse(""))
                .contains("default-src 'none'", "script-src 'self'", "frame-ancestors 'none'")
                .doesNotContain("unsafe");
        assertThat(page.headers().firstValue("X-Evil")).isEmpty();
    }

    @Test
    void theMessageItselfIsShownAsText() throws Exception {
        assertThat(operator.get("submissions/2").body()).contains("&lt;script&gt;alert(1)&lt;/script&gt;");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "submissions/1/messages/0/picture?path=../../../../etc/passwd",
                "submissions/1/messages/0/picture?path=%2Fetc%2Fpasswd",
                "submissions/1/messages/0/picture?path=..%5C..%5Ckeys",
                "submissions/1/messages/0/picture?path=1%00",
                "submissions/1/messages/-1/picture?path=99",
                "submissions/1/messages/7/picture?path=1",
                "submissions/0",
                "submissions/-1",
                "submissions/9223372036854775807"
            })
    void aForgedIdOrPathFindsNothing(String path) throws Exception {
        assertThat(operator.get(path).statusCode()).isEqualTo(404);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "submissions/x",
                "submissions/1%20OR%201=1",
                "submissions/99999999999999999999",
                "queue/news?since=x"
            })
    void nonsenseIsRefusedWithoutAFault(String path) throws Exception {
        assertThat(operator.get(path).statusCode()).isEqualTo(400);
    }

    @ParameterizedTest
    @ValueSource(strings = {"queue?page=-5", "queue?page=x&lane=nowhere&kind=%27;DROP", "queue?words=%25_%27%22%5C"})
    void aStrangeFilterFiltersNothingOrFindsNothing(String path) throws Exception {
        assertThat(operator.get(path).statusCode()).isEqualTo(200);
    }

    @Test
    void photosAreKeptByNoCache() throws Exception {
        HttpResponse<String> page = operator.get("submissions/1");
        var source = java.util.regex.Pattern.compile("src=\"/(submissions/1/messages[^\"]+)\"")
                .matcher(page.body());
        assertThat(source.find()).isTrue();
        HttpResponse<String> picture = operator.get(source.group(1).replace("&amp;", "&"));
        assertThat(picture.headers().firstValue("Content-Type")).contains("image/jpeg");
        assertThat(picture.headers().firstValue("Cache-Control").orElse("")).contains("no-store");
        assertThat(picture.headers().firstValue("X-Content-Type-Options")).contains("nosniff");
    }

    @Test
    void aReplyGoesNowhereButToThePersonsOwnAddress() throws Exception {
        for (String to :
                new String[] {"enemy@elsewhere.example", "tariq@x.example\r\nBcc: enemy@elsewhere.example", ""}) {
            operator.get("submissions/1");
            operator.post(
                    "submissions/1/reply",
                    Map.of("version", "1", "to", to, "language", "en", "text", "Hello", "then", "STAY"));
        }
        assertThat(morning.desk.outbox().written(NOW.minusSeconds(60), NOW.plusSeconds(60)))
                .isEmpty();
    }

    @Test
    void theSessionIsANewOneAfterSigningIn() throws Exception {
        Visitor visitor = Visitor.anonymous(morning);
        visitor.get("sign-in");
        String before = visitor.session();
        visitor.signIn(Role.OPERATOR.code(), Morning.PASSWORD);
        assertThat(visitor.session()).isNotEmpty().isNotEqualTo(before);
    }

    @Test
    void guessingGetsSlowerAndIsRecorded() throws Exception {
        Morning.person(morning.desk, "guessed", Set.of(Role.OPERATOR));
        Visitor guesser = Visitor.anonymous(morning);
        for (int i = 0; i < 3; i++) {
            assertThat(guesser.signIn("guessed", "wrong " + i)).contains("error");
        }
        assertThat(guesser.signIn("guessed", Morning.PASSWORD))
                .as("right, but too soon")
                .contains("error");
        morning.clock.put(NOW.plus(Duration.ofSeconds(3)));
        assertThat(guesser.signIn("guessed", Morning.PASSWORD))
                .as("after waiting")
                .doesNotContain("error");
        morning.clock.put(NOW);
        String ledger = morning.desk
                .store()
                .read(tx -> String.join(
                        "\n",
                        tx.ledger().leaves(0, 10_000).stream()
                                .map(l -> new String(l, StandardCharsets.UTF_8))
                                .toList()));
        assertThat(ledger.split("sign-in-failed", -1)).hasSizeGreaterThanOrEqualTo(4);
        assertThat(ledger).contains("signed-in").doesNotContain("wrong 0");
    }

    @Test
    void whoDepartsIsOutAtOnce() throws Exception {
        Morning.person(morning.desk, "leaver", Set.of(Role.OPERATOR));
        Visitor leaver = Visitor.signedIn(morning, "leaver");
        assertThat(leaver.get("queue").statusCode()).isEqualTo(200);
        morning.desk.store().write(tx -> {
            User u = tx.users().find(new UserId("leaver")).orElseThrow();
            tx.users().save(new User(u.id(), u.displayName(), u.roles(), u.passwordHash(), false));
            return true;
        });
        assertThat(leaver.get("queue").headers().firstValue("Location").orElse(""))
                .endsWith("/sign-in");
    }
}
