package org.tidegate.console;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.CookieManager;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tidegate.casework.Desk;
import org.tidegate.casework.DeskConfig;
import org.tidegate.console.OpenIdProvider.Fault;
import org.tidegate.rules.Rules;
import org.tidegate.work.Role;
import org.tidegate.work.User;
import org.tidegate.work.UserId;

/**
 * Signing in at a provider: what OpenID Connect Core 1.0, 3.1.3.7, demands of a client's checks of the ID token, one fault each,
 * and that roles are given here alone.
 */
class OpenIdTest {

    @TempDir
    static Path data;

    private static OpenIdProvider provider;
    private static Desk desk;
    private static ConsoleServer console;
    private static String address = "";

    @BeforeAll
    static void start() throws Exception {
        provider = new OpenIdProvider();
        Clock clock = Clock.fixed(Instant.parse("2026-05-04T08:35:00Z"), ZoneOffset.UTC);
        Rules rules = Rules.bundled();
        desk = Desk.open(DeskConfig.embedded(data, rules, clock));
        desk.store().write(tx -> {
            tx.users().save(new User(new UserId("anna"), "Anna", Set.of(Role.AUDITOR), Passwords.NONE, true));
            tx.users().save(new User(new UserId("otto"), "Otto", Set.of(Role.OPERATOR), Passwords.NONE, false));
            return true;
        });
        int port = freePort();
        address = "http://127.0.0.1:" + port;
        OpenId openId = new OpenId(
                URI.create(provider.issuer()),
                OpenIdProvider.CLIENT,
                () -> OpenIdProvider.SECRET,
                "sub",
                URI.create(address + "/"));
        console = ConsoleServer.start("127.0.0.1", port, desk, rules, clock, Optional.of(openId));
    }

    @AfterAll
    static void stop() {
        console.close();
        desk.close();
        provider.close();
    }

    @BeforeEach
    void honest() {
        provider.person = "anna";
        provider.fault = Fault.NONE;
    }

    @Test
    void aPersonWhoIsSomebodyHereComesInWithTheRolesGivenHere() throws Exception {
        HttpClient browser = browser();
        assertThat(get(browser, address + "/sign-in").body()).contains(OpenIdSignIn.BUTTON);
        assertThat(signIn(browser)).endsWith("/");
        assertThat(get(browser, address + "/find").statusCode()).isEqualTo(200);
        assertThat(get(browser, address + "/queue").statusCode()).isEqualTo(403);
    }

    @ParameterizedTest
    @EnumSource(value = Fault.class, mode = EnumSource.Mode.EXCLUDE, names = "NONE")
    void aTokenThatIsNotWhatItShouldBeLetsNobodyIn(Fault fault) throws Exception {
        provider.fault = fault;
        refused(browser());
    }

    @Test
    void whoIsNobodyHereOrHasDepartedStaysOutside() throws Exception {
        for (String name : new String[] {"nora", "otto", "daemon", "policy", ""}) {
            provider.person = name;
            refused(browser());
        }
    }

    @Test
    void anAnswerThatThisBrowserDidNotAskForIsRefused() throws Exception {
        HttpClient other = browser();
        String answer = follow(other, follow(other, address + OpenIdSignIn.BUTTON));
        HttpClient browser = browser();
        assertThat(follow(browser, answer)).contains("stranger");
        assertThat(get(browser, address + "/find").statusCode()).isEqualTo(302);
    }

    @Test
    void aPersonWithoutAPasswordDoesNotComeInWithAnEmptyOne() throws Exception {
        Visitor visitor = Visitor.at(address + "/");
        for (String password : new String[] {"", " ", Passwords.NONE}) {
            assertThat(visitor.signIn("anna", password)).contains("error");
        }
    }

    private static void refused(HttpClient browser) throws Exception {
        assertThat(signIn(browser)).contains("stranger");
        assertThat(get(browser, address + "/find").statusCode()).isEqualTo(302);
    }

    /** @return where the pages send the browser when it comes back from the provider */
    private static String signIn(HttpClient browser) throws Exception {
        String toProvider = follow(browser, address + OpenIdSignIn.BUTTON);
        return follow(browser, follow(browser, toProvider));
    }

    private static String follow(HttpClient browser, String place) throws Exception {
        HttpResponse<String> answer = get(browser, place);
        assertThat(answer.statusCode()).as(place + ": " + answer.body()).isEqualTo(302);
        return answer.headers().firstValue("Location").orElseThrow();
    }

    private static HttpResponse<String> get(HttpClient browser, String place) throws Exception {
        URI whole = URI.create(address + "/").resolve(place);
        return browser.send(HttpRequest.newBuilder(whole).build(), HttpResponse.BodyHandlers.ofString());
    }

    private static HttpClient browser() {
        return HttpClient.newBuilder()
                .cookieHandler(new CookieManager())
                .followRedirects(HttpClient.Redirect.NEVER)
                .build();
    }

    private static int freePort() throws Exception {
        try (ServerSocket socket = new ServerSocket(0)) {
            return socket.getLocalPort();
        }
    }
}
