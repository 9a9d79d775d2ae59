package org.tidegate.console;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tidegate.booking.BookReader;
import org.tidegate.booking.BookResult;
import org.tidegate.casework.Desk;
import org.tidegate.casework.DeskConfig;
import org.tidegate.rules.Rules;
import org.tidegate.rules.RulesReader;
import org.tidegate.rules.RulesResult;
import org.tidegate.work.Role;
import org.tidegate.work.User;
import org.tidegate.work.UserId;

/** The pages over a real store, asked by a real HTTP client. */
class ConsoleServerTest {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-05-04T08:35:00Z"), ZoneOffset.UTC);

    @TempDir
    static Path data;

    private static Desk desk;
    private static ConsoleServer console;

    @BeforeAll
    static void start() throws Exception {
        Rules rules = ((RulesResult.Loaded) RulesReader.bundled()).rules();
        desk = Desk.open(DeskConfig.embedded(data, rules, CLOCK));
        BookResult.Read book = (BookResult.Read) BookReader.read(Path.of("sample-mailbox/appointments.csv"));
        desk.books().replace(book.book(), UserId.DAEMON);
        for (String file : new String[] {"01-perfect.eml", "24-worried.eml", "32-missing-id-first.eml"}) {
            desk.intake().take(Files.readAllBytes(Path.of("sample-mailbox", file)), Optional.empty());
        }
        desk.worker().drain();
        desk.store().write(tx -> {
            tx.users()
                    .save(new User(
                            new UserId("anna"),
                            "Anna",
                            Set.of(Role.OPERATOR),
                            Passwords.encode("a long password"),
                            true));
            return true;
        });
        console = ConsoleServer.start("127.0.0.1", 0, desk, rules, CLOCK);
    }

    @AfterAll
    static void stop() {
        console.close();
        desk.close();
    }

    @Test
    void nobodySeesAnythingWithoutSigningIn() throws Exception {
        HttpClient client = client();
        for (String path : new String[] {"", "submissions/1", "submissions/1/messages/0/picture?path=2"}) {
            HttpResponse<String> answer = get(client, path);
            assertThat(answer.uri().getPath()).as(path).isEqualTo("/sign-in");
        }
    }

    @Test
    void aWrongPasswordIsRefused() throws Exception {
        HttpClient client = client();
        signIn(client, "wrong password");
        assertThat(get(client, "").uri().getPath()).isEqualTo("/sign-in");
    }

    @Test
    void theQueueShowsUrgentWordsFirst() throws Exception {
        HttpClient client = client();
        signIn(client, "a long password");
        String page = get(client, "").body();
        assertThat(page)
                .contains(
                        "Urgent words",
                        "Rory Kinlochan",
                        "Tariq Mahfoudi",
                        "No identity document is in view",
                        "does not diagnose");
        assertThat(page.indexOf("Rory Kinlochan")).isLessThan(page.indexOf("Tariq Mahfoudi"));
    }

    @Test
    void thePageOnTheTimesForTheParticipantCanBePrinted() throws Exception {
        HttpClient client = client();
        signIn(client, "a long password");
        assertThat(get(client, "submissions/1").body()).contains("/submissions/1/times.pdf", "Send this page");
        HttpResponse<String> page = get(client, "submissions/1/times.pdf");
        assertThat(page.headers().firstValue("Content-Type").orElse("")).isEqualTo("application/pdf");
        assertThat(page.body()).startsWith("%PDF-");
    }

    @Test
    void theSubmissionShowsPhotoChecksAndDerivation() throws Exception {
        HttpClient client = client();
        signIn(client, "a long password");
        String page = get(client, "submissions/3").body();
        assertThat(page)
                .contains(
                        "Tariq Mahfoudi",
                        "no-id",
                        "Photo taken in the reading window",
                        "inside",
                        "Suggested reply",
                        "does not diagnose");
        Matcher photo =
                Pattern.compile("src=\"(/submissions/3/messages/[^\"]+)\"").matcher(page);
        assertThat(photo.find()).isTrue();
        HttpResponse<String> picture = get(client, photo.group(1).substring(1).replace("&amp;", "&"));
        assertThat(picture.headers().firstValue("Content-Type")).contains("image/jpeg");
        assertThat(picture.headers().firstValue("Cache-Control").orElse("")).contains("no-store");
    }

    @Test
    void everyAnswerForbidsScriptsFromElsewhere() throws Exception {
        HttpResponse<String> answer = get(client(), "sign-in");
        assertThat(answer.headers().firstValue("Content-Security-Policy").orElse(""))
                .contains("default-src 'none'", "script-src 'self'");
        assertThat(answer.headers().firstValue("X-Content-Type-Options")).contains("nosniff");
    }

    @Test
    void aFormWithoutItsTokenIsRefused() throws Exception {
        HttpClient client = client();
        HttpResponse<String> answer = client.send(
                HttpRequest.newBuilder(URI.create(console.address() + "sign-in"))
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(HttpRequest.BodyPublishers.ofString("username=anna&password=a+long+password"))
                        .build(),
                HttpResponse.BodyHandlers.ofString());
        assertThat(answer.uri().getPath()).isEqualTo("/sign-in");
        assertThat(get(client, "").uri().getPath()).isEqualTo("/sign-in");
    }

    @Test
    void anUnknownSubmissionIsNotFound() throws Exception {
        HttpClient client = client();
        signIn(client, "a long password");
        assertThat(get(client, "submissions/999").statusCode()).isEqualTo(404);
    }

    private static HttpClient client() {
        return HttpClient.newBuilder()
                .cookieHandler(new CookieManager())
                .followRedirects(HttpClient.Redirect.ALWAYS)
                .build();
    }

    private static HttpResponse<String> get(HttpClient client, String path) throws Exception {
        return client.send(
                HttpRequest.newBuilder(URI.create(console.address() + path)).build(),
                HttpResponse.BodyHandlers.ofString(StandardCharsets.ISO_8859_1));
    }

    private static void signIn(HttpClient client, String password) throws Exception {
        Matcher token = Pattern.compile("name=\"_csrf\"[^>]*value=\"([^\"]+)\"")
                .matcher(get(client, "sign-in").body());
        assertThat(token.find()).isTrue();
        String form = "username=anna&password=" + URLEncoder.encode(password, StandardCharsets.UTF_8) + "&_csrf="
                + URLEncoder.encode(token.group(1), StandardCharsets.UTF_8);
        client.send(
                HttpRequest.newBuilder(URI.create(console.address() + "sign-in"))
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(HttpRequest.BodyPublishers.ofString(form))
                        .build(),
                HttpResponse.BodyHandlers.ofString());
    }
}
