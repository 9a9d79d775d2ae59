package org.tidegate.console;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.http.HttpMethod;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;
import org.tidegate.work.Role;

/** Every route there is, tried by every role, against a table that was written by hand and not from the rules. */
class RoutesTest {

    private static final Set<String> OPEN = Set.of("GET /sign-in", "GET /", "GET /error");

    /** Who may take which route: O operator, R reader, A auditor, L clinical lead, D data protection officer. */
    private static final Map<String, String> TABLE = Map.ofEntries(
            Map.entry("GET /queue", "ORL"),
            Map.entry("GET /queue/news", "ORL"),
            Map.entry("POST /queue/answer", "ORL"),
            Map.entry("POST /queue/answer/confirm", "ORL"),
            Map.entry("GET /find", "ORALD"),
            Map.entry("GET /submissions/{id}", "ORALD"),
            Map.entry("GET /submissions/{id}/timeline.svg", "ORALD"),
            Map.entry("GET /submissions/{id}/times.pdf", "ORALD"),
            Map.entry("GET /submissions/{id}/messages/{message}/picture", "ORALD"),
            Map.entry("GET /submissions/{id}/cassettes/{number}", "ORALD"),
            Map.entry("POST /submissions/{id}/claim", "ORL"),
            Map.entry("POST /submissions/{id}/put-back", "ORL"),
            Map.entry("POST /submissions/{id}/reply", "ORL"),
            Map.entry("POST /submissions/{id}/reply/preview", "ORL"),
            Map.entry("POST /submissions/{id}/set-aside", "ORL"),
            Map.entry("POST /submissions/{id}/times", "ORL"),
            Map.entry("POST /submissions/{id}/judgement", "ORL"),
            Map.entry("POST /submissions/{id}/link", "ORL"),
            Map.entry("POST /submissions/{id}/split", "ORL"),
            Map.entry("POST /submissions/{id}/reopen", "ORL"),
            Map.entry("POST /submissions/{id}/reading", "RL"),
            Map.entry("POST /submissions/{id}/release", "RL"),
            Map.entry("POST /submissions/{id}/amend", "L"),
            Map.entry("POST /submissions/{id}/withdraw", "L"),
            Map.entry("GET /outbox", "ORL"),
            Map.entry("POST /outbox/{letter}/recall", "ORL"),
            Map.entry("POST /outbox/{letter}/resolve", "ORL"),
            Map.entry("GET /horizon", "ORL"),
            Map.entry("POST /horizon/new-times", "ORL"),
            Map.entry("POST /horizon/new-times/confirm", "ORL"),
            Map.entry("GET /not-heard-from", "ORL"),
            Map.entry("POST /not-heard-from/remind", "ORL"),
            Map.entry("POST /not-heard-from/remind/confirm", "ORL"),
            Map.entry("POST /not-heard-from/observed", "ORL"),
            Map.entry("GET /repeat", "ORL"),
            Map.entry("POST /repeat", "ORL"),
            Map.entry("GET /retention", "D"),
            Map.entry("POST /retention/forget", "D"),
            Map.entry("POST /retention/holds", "D"),
            Map.entry("POST /retention/holds/lift", "D"),
            Map.entry("GET /handover", "ORALD"),
            Map.entry("GET /registers", "ORL"),
            Map.entry("POST /registers/lots", "RL"),
            Map.entry("POST /registers/lots/lift", "RL"),
            Map.entry("POST /registers/outages", "RL"));

    private static final Map<Role, String> LETTERS = Map.of(
            Role.OPERATOR, "O",
            Role.READER, "R",
            Role.AUDITOR, "A",
            Role.CLINICAL_LEAD, "L",
            Role.DATA_PROTECTION_OFFICER, "D");

    /** What any form might ask for, so that a refusal is one of right and not of form. */
    private static final Map<String, String> FORM = Map.ofEntries(
            Map.entry("version", "1"),
            Map.entry("language", "en"),
            Map.entry("text", "Hello"),
            Map.entry("then", "STAY"),
            Map.entry("decision", "accept"),
            Map.entry("reason", "no-bearing"),
            Map.entry("test", "ABSENT"),
            Map.entry("control", "PRESENT"),
            Map.entry("kind", "no-id"),
            Map.entry("why", "one-mail-for-several"),
            Map.entry("went", "true"),
            Map.entry("lot", "SK9999Z"),
            Map.entry("people", "2"),
            Map.entry("number", "S-999"),
            Map.entry("need", "dispute"),
            Map.entry("timer", "2026-05-04T09:59"),
            Map.entry("from", "2026-05-04T06:00"),
            Map.entry("until", "2026-05-04T06:10"));

    @TempDir
    static Path data;

    private static Morning morning;

    @BeforeAll
    static void start() throws Exception {
        morning = Morning.until(data, Instant.parse("2026-05-04T09:00:00Z"), "32-");
    }

    @AfterAll
    static void stop() {
        morning.close();
    }

    @Test
    void theTableNamesEveryRouteAndNoOther() {
        Set<String> found = new TreeSet<>();
        morning.console
                .bean(RequestMappingHandlerMapping.class)
                .getHandlerMethods()
                .forEach((mapping, method) -> {
                    Set<String> paths = mapping.getPatternValues();
                    if (mapping.getMethodsCondition().getMethods().isEmpty()) {
                        paths.forEach(p -> found.add("GET " + p));
                    }
                    mapping.getMethodsCondition().getMethods().forEach(m -> paths.forEach(p -> found.add(m + " " + p)));
                });
        found.removeAll(OPEN);
        assertThat(found).isEqualTo(new TreeSet<>(TABLE.keySet()));
        assertThat(Route.ALL.stream().map(r -> r.method() + " " + r.path())).containsExactlyInAnyOrderElementsOf(found);
    }

    @Test
    void everyRoleComesWhereItMayAndNowhereElse() throws Exception {
        SoftAssertions all = new SoftAssertions();
        for (Role role : Role.values()) {
            Visitor visitor = Visitor.signedIn(morning, role.code());
            for (Map.Entry<String, String> route : new TreeMap<>(TABLE).entrySet()) {
                boolean may = route.getValue().contains(LETTERS.get(role));
                int status = ask(visitor, route.getKey()).statusCode();
                all.assertThat(status == 403)
                        .as("%s on %s gives %d", role, route.getKey(), status)
                        .isEqualTo(!may);
                all.assertThat(status).as("%s on %s", role, route.getKey()).isLessThan(500);
            }
        }
        all.assertAll();
    }

    @Test
    void nobodyGetsAnywhereWithoutSigningIn() throws Exception {
        SoftAssertions all = new SoftAssertions();
        for (String route : TABLE.keySet()) {
            Visitor stranger = Visitor.anonymous(morning);
            stranger.get("sign-in");
            HttpResponse<String> answer = ask(stranger, route);
            all.assertThat(answer.headers().firstValue("Location").orElse(""))
                    .as(route)
                    .endsWith("/sign-in");
        }
        all.assertAll();
    }

    @Test
    void noFormIsTakenWithoutItsToken() throws Exception {
        SoftAssertions all = new SoftAssertions();
        Visitor lead = Visitor.signedIn(morning, Role.CLINICAL_LEAD.code());
        for (Route route : Route.ALL) {
            if (route.method().equals(HttpMethod.POST)) {
                all.assertThat(lead.postWithoutToken(path(route.path()), FORM).statusCode())
                        .as(route.path())
                        .isEqualTo(403);
            }
        }
        all.assertAll();
    }

    @Test
    void whatIsNotListedIsClosed() throws Exception {
        Visitor lead = Visitor.signedIn(morning, Role.CLINICAL_LEAD.code());
        for (String path :
                new String[] {"actuator", "submissions", "submissions/1/raw", "console/templates/queue.html"}) {
            assertThat(lead.get(path).statusCode()).as(path).isEqualTo(403);
        }
    }

    private static HttpResponse<String> ask(Visitor visitor, String route) throws Exception {
        String path = path(route.substring(route.indexOf(' ') + 1));
        return route.startsWith("GET") ? visitor.get(path + "?since=0&path=1&test=SS-R8L3") : visitor.post(path, FORM);
    }

    /** Of a submission and a letter that are not there, so that nothing is changed for the next role. */
    private static String path(String pattern) {
        return pattern.substring(1)
                .replace("{id}", "999")
                .replace("{message}", "0")
                .replace("{letter}", "999")
                .replace("{number}", "999");
    }
}
