package org.tidegate.casework;

import java.util.List;
import org.tidegate.rules.RoleRules;
import org.tidegate.rules.RoleRules.Permission;
import org.tidegate.work.Role;
import org.tidegate.work.User;

/** Who may do what, as {@code roles.yaml} says. */
public final class Rights {

    private final RoleRules rules;

    Rights(RoleRules rules) {
        this.rules = rules;
    }

    /** A departed user may do nothing. */
    public boolean may(User who, Permission permission) {
        return who.active()
                && rules.roles().stream()
                        .anyMatch(
                                r -> r.may().contains(permission) && codes(who).contains(r.name()));
    }

    /** Whether the user has one of these roles. */
    static boolean isOneOf(User who, List<String> roles) {
        return who.active() && codes(who).stream().anyMatch(roles::contains);
    }

    private static List<String> codes(User who) {
        return who.roles().stream().map(Role::code).sorted().toList();
    }
}
