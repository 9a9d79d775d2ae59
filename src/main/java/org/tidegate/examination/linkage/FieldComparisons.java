package org.tidegate.examination.linkage;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.tidegate.booking.Appointment;
import org.tidegate.booking.TestRecord;
import org.tidegate.finding.SubjectReading;

/** Compares the readings of one statement with tests, field by field; every name is taken apart once. */
final class FieldComparisons {

    private final Weights weights;
    private final NameComparison names;
    private final TimeComparison times;
    private final Statement statement;
    private final TestIndex index;
    private final Map<String, PersonName> parsed = new HashMap<>();

    FieldComparisons(
            Weights weights, NameComparison names, TimeComparison times, Statement statement, TestIndex index) {
        this.weights = weights;
        this.names = names;
        this.times = times;
        this.statement = statement;
        this.index = index;
    }

    private PersonName name(String text) {
        return parsed.computeIfAbsent(text, PersonName::of);
    }

    /** Who the statement is of: name, address, date of birth. */
    List<FieldWeight> person(SubjectReading reading, Appointment a) {
        List<FieldWeight> found = new ArrayList<>();
        Optional<NameAgreement> name = reading.name().map(n -> compare(n, a));
        name.ifPresent(n -> {
            add(
                    found,
                    wholeName(reading.name().orElse(""), a) ? "family_name" : "given_name",
                    n.given(),
                    reading.name().orElse("") + " / " + a.givenName());
            add(found, "family_name", n.family(), reading.name().orElse("") + " / " + a.familyName());
            add(
                    found,
                    "suffix",
                    suffix(reading.name().orElse(""), a),
                    reading.name().orElse(""));
        });
        boolean otherPerson = name.filter(NameAgreement::contradicted).isPresent();
        statement
                .fromAddress()
                .ifPresent(from ->
                        add(found, "address", a.email().map(booked -> address(from, booked, otherPerson)), from));
        statement.fromDisplayName().ifPresent(d -> {
            add(found, "display_name", displayName(compare(d, a), name), d);
            add(found, "guardian", a.guardian().filter(g -> isGuardian(d, g)).map(g -> "same"), d);
        });
        reading.dateOfBirth().ifPresent(d -> add(found, "date_of_birth", birth(d, a.dateOfBirth()), d.toString()));
        return found;
    }

    /**
     * Which test it is of: time, reference, mark.
     *
     * @param likeliest whether the reading is the likeliest one
     */
    List<FieldWeight> test(SubjectReading reading, TestRecord test, boolean likeliest) {
        List<FieldWeight> found =
                new ArrayList<>(times.compare(reading.testTime(), statement.arrived(), test, likeliest));
        reading.reference()
                .ifPresent(r -> add(
                        found,
                        "reference",
                        code(r, Optional.of(test.appointment().ref())),
                        r));
        reading.mark().ifPresent(m -> add(found, "mark", code(m, test.mark()), m));
        return found;
    }

    List<FieldWeight> place(SubjectReading reading, TestRecord test) {
        List<FieldWeight> found = new ArrayList<>();
        String booked = test.appointment().clinic();
        reading.clinic()
                .ifPresent(c -> add(
                        found,
                        "clinic",
                        Optional.of(c.equals(booked) ? "same" : NameAgreement.DIFFERENT),
                        c + " / " + booked));
        return found;
    }

    private void add(List<FieldWeight> found, String field, Optional<String> level, String words) {
        level.flatMap(l -> weights.of(field, l, words)).ifPresent(found::add);
    }

    private NameAgreement compare(String stated, Appointment a) {
        PersonName name = name(stated);
        NameAgreement agreement = names.compare(name, name(a.givenName()), name(a.familyName()));
        boolean alias = agreement.familyAgrees()
                && agreement.given().filter(NameAgreement.DIFFERENT::equals).isPresent()
                && a.email().filter(e -> namedIn(e, name, a)).isPresent();
        return alias ? new NameAgreement(Optional.of("nickname"), agreement.family()) : agreement;
    }

    /** A first name that the booked address bears although the booking does not: the participant goes by it. */
    private boolean namedIn(String address, PersonName stated, Appointment a) {
        String local = address.substring(0, Math.max(0, address.indexOf('@'))).toLowerCase(Locale.ROOT);
        List<String> parts = List.of(local.split("[^a-z]+"));
        PersonName family = name(a.familyName());
        return stated.core().stream()
                .filter(t -> family.tokens().stream().noneMatch(t::sharesSound))
                .anyMatch(t -> t.plain().length() >= 3 && parts.contains(t.plain()));
    }

    /** The one word that both give is all there is: it tells as much as a family name. */
    private boolean wholeName(String stated, Appointment a) {
        return a.familyName().isBlank()
                && name(stated).tokens().size() == 1
                && name(a.givenName()).tokens().size() == 1;
    }

    private Optional<String> suffix(String stated, Appointment a) {
        Optional<String> said = name(stated).suffix();
        return Generation.level(said, Generation.of(a, said.isPresent() ? index.namesakes(a) : List.of()));
    }

    private boolean isGuardian(String displayName, String guardian) {
        NameAgreement n = names.compare(name(displayName), name(guardian), name(""));
        return n.givenAgreesInFull();
    }

    private String address(String from, String booked, boolean otherPerson) {
        if (!from.equalsIgnoreCase(booked)) {
            return NameAgreement.DIFFERENT;
        }
        if (otherPerson) {
            return "other_person";
        }
        int persons = index.personsAt(booked, 5);
        if (persons <= 1) {
            return "own";
        }
        return persons <= 3 ? "household" : "shared";
    }

    /** The display name counts where the statement itself leaves the name, or the given name, open. */
    private static Optional<String> displayName(NameAgreement display, Optional<NameAgreement> stated) {
        if (stated.isEmpty()) {
            boolean both = display.givenAgreesInFull() && display.familyAgrees();
            if (both) {
                return Optional.of("full");
            }
            boolean one = !display.contradicted() && (display.givenAgreesInFull() || display.familyAgrees());
            return Optional.of(one ? NameAgreement.PART : NameAgreement.DIFFERENT);
        }
        boolean completes = stated.get().givenIsOpen() && display.givenAgreesInFull() && !display.contradicted();
        return completes ? Optional.of("completes") : Optional.empty();
    }

    private static Optional<String> birth(LocalDate stated, Optional<LocalDate> booked) {
        return booked.map(b -> {
            if (b.equals(stated)) {
                return NameAgreement.EXACT;
            }
            boolean swapped = b.getYear() == stated.getYear()
                    && b.getDayOfMonth() == stated.getMonthValue()
                    && b.getMonthValue() == stated.getDayOfMonth();
            boolean near = Damerau.distance(b.toString(), stated.toString(), 2) < 2;
            return swapped || near ? "typo" : NameAgreement.DIFFERENT;
        });
    }

    private static Optional<String> code(String stated, Optional<String> booked) {
        return booked.map(b -> {
            String x = BlockingKeys.plain(stated).toUpperCase(Locale.ROOT);
            String y = BlockingKeys.plain(b);
            return x.equals(y) ? NameAgreement.EXACT : Damerau.distance(x, y, 2) < 2 ? "typo" : NameAgreement.DIFFERENT;
        });
    }
}
