package org.tidegate.console;

import static org.tidegate.rules.RoleRules.Permission.AMEND;
import static org.tidegate.rules.RoleRules.Permission.AUDIT;
import static org.tidegate.rules.RoleRules.Permission.FORGET;
import static org.tidegate.rules.RoleRules.Permission.JUDGE;
import static org.tidegate.rules.RoleRules.Permission.READ;
import static org.tidegate.rules.RoleRules.Permission.RELEASE;
import static org.tidegate.rules.RoleRules.Permission.TRIAGE;

import java.util.List;
import java.util.Set;
import org.springframework.http.HttpMethod;
import org.tidegate.rules.RoleRules.Permission;

/**
 * One way into the pages and who may take it; what is not listed is closed to everybody.
 *
 * @param any one of these is enough
 */
record Route(HttpMethod method, String path, Set<Permission> any) {

    static final List<Route> ALL = List.of(
            get("/queue", TRIAGE),
            get("/queue/news", TRIAGE),
            post("/queue/answer", TRIAGE),
            post("/queue/answer/confirm", TRIAGE),
            get("/find", TRIAGE, AUDIT),
            get("/submissions/{id}", TRIAGE, AUDIT),
            get("/submissions/{id}/timeline.svg", TRIAGE, AUDIT),
            get("/submissions/{id}/times.pdf", TRIAGE, AUDIT),
            get("/submissions/{id}/messages/{message}/picture", TRIAGE, AUDIT),
            get("/submissions/{id}/cassettes/{number}", TRIAGE, AUDIT),
            post("/submissions/{id}/claim", TRIAGE),
            post("/submissions/{id}/put-back", TRIAGE),
            post("/submissions/{id}/reply", TRIAGE),
            post("/submissions/{id}/reply/preview", TRIAGE),
            post("/submissions/{id}/set-aside", TRIAGE),
            post("/submissions/{id}/times", TRIAGE),
            post("/submissions/{id}/judgement", JUDGE),
            post("/submissions/{id}/link", JUDGE),
            post("/submissions/{id}/split", JUDGE),
            post("/submissions/{id}/reopen", JUDGE),
            post("/submissions/{id}/reading", READ),
            post("/submissions/{id}/release", RELEASE),
            post("/submissions/{id}/amend", AMEND),
            post("/submissions/{id}/withdraw", AMEND),
            get("/outbox", TRIAGE),
            post("/outbox/{letter}/recall", TRIAGE),
            post("/outbox/{letter}/resolve", TRIAGE),
            get("/horizon", TRIAGE),
            post("/horizon/new-times", TRIAGE),
            post("/horizon/new-times/confirm", TRIAGE),
            get("/not-heard-from", TRIAGE),
            post("/not-heard-from/remind", TRIAGE),
            post("/not-heard-from/remind/confirm", TRIAGE),
            post("/not-heard-from/observed", TRIAGE),
            get("/repeat", TRIAGE),
            post("/repeat", TRIAGE),
            get("/retention", FORGET),
            post("/retention/forget", FORGET),
            post("/retention/holds", FORGET),
            post("/retention/holds/lift", FORGET),
            get("/handover", TRIAGE, AUDIT),
            get("/registers", TRIAGE),
            post("/registers/lots", READ),
            post("/registers/lots/lift", READ),
            post("/registers/outages", READ));

    private static Route get(String path, Permission... any) {
        return new Route(HttpMethod.GET, path, Set.of(any));
    }

    private static Route post(String path, Permission... any) {
        return new Route(HttpMethod.POST, path, Set.of(any));
    }

    String[] authorities() {
        return any.stream().map(Route::authority).sorted().toArray(String[]::new);
    }

    static String authority(Permission permission) {
        return "MAY_" + permission.name();
    }
}
