package org.tidegate.rules;

import java.util.List;

@Doc("Who may do what, and the reasons a person may give for a judgement.")
public record RoleRules(
        @Doc("Roles; a user has one or more.") List<Role> roles,
        @Doc("Reason codes.") List<Reason> reasons) {

    public enum Permission {
        /** See the queue and submissions, send suggested replies. */
        TRIAGE,
        /** Judge discrepancies whose check names the role. */
        JUDGE,
        /** Record a reading. */
        READ,
        /** Release result letters and certificates. */
        RELEASE,
        /** Amend or withdraw after closing. */
        AMEND,
        /** Trace, pack and audit. */
        AUDIT,
        /** Load and rehearse rules. */
        RULES,
        /** Forget data whose time is up. */
        FORGET,
        /** Manage users and accounts. */
        ADMINISTER
    }

    public enum Decision {
        ACCEPT,
        ASK,
        REPEAT,
        VOID
    }

    @Doc("One role.")
    public record Role(
            @Doc("Name in commands and rules.") String name,
            @Doc("Name on the screen.") String title,
            @Doc("What it may do.") List<Permission> may) {}

    @Doc("One reason for a judgement.")
    public record Reason(
            @Doc("Stable code in the ledger.") String code,
            @Doc("Words on the screen.") String words,
            @Doc("Decisions that it may stand beside.") List<Decision> decisions) {}
}
