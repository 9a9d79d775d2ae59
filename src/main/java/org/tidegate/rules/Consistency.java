package org.tidegate.rules;

import java.time.DateTimeException;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.tidegate.finding.DiscrepancyCode;

/** What no single value shows: doubles, gaps, and names that point nowhere. */
final class Consistency {

    private final Rules rules;
    private final Faults faults;

    private Consistency(Rules rules, Faults faults) {
        this.rules = rules;
        this.faults = faults;
    }

    static void check(Rules rules, Faults faults) {
        Consistency c = new Consistency(rules, faults);
        c.once(rules.clinics(), Clinic::code, "clinic");
        c.once(rules.protocols(), Protocol::kit, "kit");
        c.once(rules.checks(), r -> r.code().code(), "check");
        c.once(rules.matching().fields(), MatchingRules.Field::name, "field");
        c.once(rules.roles().roles(), RoleRules.Role::name, "role");
        c.once(rules.roles().reasons(), RoleRules.Reason::code, "reason");
        rules.protocols().forEach(c::window);
        rules.matching().fields().forEach(c::levels);
        c.everyCodeHasACheck();
        c.judgesExist();
        c.offsets();
        c.unattended();
        c.hours();
        c.retention();
    }

    /** A period of months has no length of its own: both are counted from one day. */
    private void retention() {
        RetentionRules r = rules.retention();
        LocalDate day = LocalDate.EPOCH;
        if (day.plus(r.cassettes()).isAfter(day.plus(r.messages()))) {
            faults.in(
                    r,
                    "cassettes is longer than messages: nobody could look at one whose case is forgotten",
                    "at most " + r.messages());
        }
    }

    private void hours() {
        HourRules h = rules.hours();
        if (h.shifts().stream().allMatch(s -> s.days().isEmpty())) {
            faults.in(h, "there is no shift: nobody would ever be there", "name days, from and until of one at least");
        }
        h.onCall().ifPresent(o -> own(o, o.address()));
        h.handoverTo().ifPresent(to -> own(h, to));
        if (!h.consoleAddress().matches("https?://[^\\s/]+(/\\S*)?")) {
            faults.in(h, "console_address is no address of a page", "for example https://tidegate.example");
        }
    }

    /** What comes from there is never answered, so that we do not write to ourselves in a circle. */
    private void own(Object place, String address) {
        if (!rules.service().ownAddresses().contains(address)) {
            faults.in(place, "'" + address + "' is not among own_addresses", "add it to service.yaml");
        }
    }

    private void unattended() {
        UnattendedRules u = rules.unattended();
        for (DiscrepancyCode code : u.askFor()) {
            if (!UnattendedRules.MEASURED.contains(code)) {
                faults.in(
                        u,
                        "ask_for names '" + code.code() + "', which a person judges",
                        "only measured faults: "
                                + UnattendedRules.MEASURED.stream()
                                        .map(DiscrepancyCode::code)
                                        .collect(Collectors.joining(", ")));
            } else if (u.leaveToPeople().contains(code)) {
                faults.in(u, "'" + code.code() + "' stands in ask_for and in leave_to_people", "keep one");
            }
        }
        if (u.lettersPerAddress() > rules.service().repliesPerAddress()) {
            faults.in(
                    u,
                    "letters_per_address is more than replies_per_address",
                    "at most " + rules.service().repliesPerAddress() + ", as service.yaml says");
        }
    }

    private <T> void once(List<T> all, Function<T, String> key, String what) {
        Set<String> seen = new HashSet<>();
        for (T t : all) {
            if (!seen.add(key.apply(t))) {
                faults.in(t, what + " '" + key.apply(t) + "' is there twice", "keep one");
            }
        }
    }

    private void window(Protocol p) {
        if (p.readFrom().compareTo(p.readUntil()) >= 0) {
            faults.in(p, "read_from is not before read_until", "for example PT20M and PT30M");
        }
        Duration sendFrom = p.submitFrom() == Protocol.SubmitFrom.TEST ? p.readFrom() : Duration.ZERO;
        if (p.submitWithin().compareTo(sendFrom) <= 0) {
            faults.in(p, "submit_within leaves no time to send", "it must end after the reading window opens");
        }
        p.cassette()
                .writing()
                .filter(w -> w.from() >= w.to())
                .ifPresent(w -> faults.in(w, "writing ends before it begins", "for example from 0.66 to 0.86"));
    }

    private void levels(MatchingRules.Field field) {
        double m = field.levels().stream()
                .mapToDouble(MatchingRules.AgreementLevel::m)
                .sum();
        double u = field.levels().stream()
                .mapToDouble(MatchingRules.AgreementLevel::u)
                .sum();
        if (m > 1 + 1e-6 || u > 1 + 1e-6) {
            faults.in(
                    field,
                    "the levels of '" + field.name() + "' add up to more than 1",
                    "m and u each sum to 1 at most");
        }
    }

    private void everyCodeHasACheck() {
        Set<DiscrepancyCode> missing = EnumSet.allOf(DiscrepancyCode.class);
        rules.checks().forEach(r -> missing.remove(r.code()));
        missing.forEach(code ->
                faults.file("checks.yaml", "no check raises " + code.code(), "add one; 'when: false' turns it off"));
    }

    private void judgesExist() {
        for (CheckRule rule : rules.checks()) {
            for (String role : rule.judgedBy()) {
                if (rules.roles().roles().stream().noneMatch(r -> r.name().equals(role))) {
                    faults.in(rule, "judged_by names the unknown role '" + role + "'", "roles stand in roles.yaml");
                }
            }
        }
    }

    private void offsets() {
        for (String offset : rules.timing().offsets()) {
            try {
                ZoneOffset.of(offset);
            } catch (DateTimeException e) {
                faults.in(rules.timing(), "'" + offset + "' is no UTC offset", "for example +05:45");
            }
        }
    }
}
