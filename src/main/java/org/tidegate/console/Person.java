package org.tidegate.console;

import java.security.Principal;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Component;
import org.springframework.web.server.ResponseStatusException;
import org.tidegate.casework.Rights;
import org.tidegate.casework.SignIns;
import org.tidegate.rules.RoleRules.Permission;
import org.tidegate.work.User;
import org.tidegate.work.UserId;

/** The person behind a request, as the store knows him at this moment. */
@Component
class Person {

    private final SignIns people;
    private final Rights rights;

    Person(SignIns people, Rights rights) {
        this.people = people;
        this.rights = rights;
    }

    User of(Principal who) {
        return people.user(new UserId(who.getName()))
                .filter(User::active)
                .orElseThrow(() -> new ResponseStatusException(HttpStatus.FORBIDDEN));
    }

    May may(Principal who) {
        return new May(of(who), rights);
    }

    /** What the person may do, for the pages: what one may not do is not offered. */
    record May(User who, Rights rights) {

        public boolean triage() {
            return rights.may(who, Permission.TRIAGE);
        }

        public boolean judge() {
            return rights.may(who, Permission.JUDGE);
        }

        public boolean read() {
            return rights.may(who, Permission.READ);
        }

        public boolean release() {
            return rights.may(who, Permission.RELEASE);
        }

        public boolean amend() {
            return rights.may(who, Permission.AMEND);
        }

        public boolean audit() {
            return rights.may(who, Permission.AUDIT);
        }
    }
}
