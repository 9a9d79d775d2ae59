package org.tidegate;

import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Holds the house as drawn in DESIGN 4: rooms, arrows, and who may touch the outside. */
class ArchitectureTest {

    private static final String BASE = "org.tidegate.";

    private static final Set<String> EXAMINATION_BELOW = Set.of("message", "booking", "rules", "finding");
    private static final Set<String> EXAMINATION_ROOMS = Set.of(
            "examination.subject",
            "examination.picture",
            "examination.linkage",
            "examination.timing",
            "examination.checks");
    private static final Set<String> BELOW_STORE =
            union(EXAMINATION_BELOW, EXAMINATION_ROOMS, Set.of("examination", "work", "ledger", "vault"));
    private static final Set<String> BELOW_CASEWORK = union(BELOW_STORE, Set.of("store", "mailbox"));
    private static final Set<String> BELOW_REPORT = union(BELOW_CASEWORK, Set.of("casework"));
    private static final Set<String> BELOW_CONSOLE = union(BELOW_REPORT, Set.of("report"));

    private static final Map<String, Set<String>> MAY_IMPORT = Map.ofEntries(
            Map.entry("message", Set.of()),
            Map.entry("booking", Set.of()),
            Map.entry("finding", Set.of("message")),
            Map.entry("rules", Set.of("finding")),
            Map.entry("examination.subject", Set.of("message", "rules", "finding")),
            Map.entry("examination.picture", Set.of("message", "rules", "finding")),
            Map.entry("examination.linkage", EXAMINATION_BELOW),
            Map.entry("examination.timing", EXAMINATION_BELOW),
            Map.entry(
                    "examination.checks",
                    union(EXAMINATION_BELOW, Set.of("examination.linkage", "examination.timing"))),
            Map.entry("examination", union(EXAMINATION_BELOW, EXAMINATION_ROOMS)),
            Map.entry("work", Set.of("finding")),
            Map.entry("ledger", Set.of()),
            Map.entry("vault", Set.of()),
            Map.entry("store", BELOW_STORE),
            Map.entry("mailbox", Set.of("message")),
            Map.entry("casework", BELOW_CASEWORK),
            Map.entry("report", BELOW_REPORT),
            Map.entry("console", BELOW_CONSOLE),
            Map.entry("cli", union(BELOW_CONSOLE, Set.of("console"))));

    private static JavaClasses house;

    @BeforeAll
    static void read() {
        house = new ClassFileImporter()
                .withImportOption(location -> !location.contains("test-classes"))
                .importPackages("org.tidegate");
    }

    @Test
    void everyClassLivesInARoom() {
        assertThat(house).isNotEmpty().allSatisfy(c -> assertThat(MAY_IMPORT).containsKey(roomOf(c)));
    }

    @Test
    void roomsImportOnlyWhatTheDesignAllows() {
        Set<String> wrong = new TreeSet<>();
        for (JavaClass c : house) {
            for (Dependency d : c.getDirectDependenciesFromSelf()) {
                String from = roomOf(c);
                String to = roomOf(d.getTargetClass());
                if (!to.isEmpty()
                        && !to.equals(from)
                        && !MAY_IMPORT.getOrDefault(from, Set.of()).contains(to)) {
                    wrong.add(from + " → " + to + ": " + c.getSimpleName() + " uses "
                            + d.getTargetClass().getSimpleName());
                }
            }
        }
        assertThat(wrong).isEmpty();
    }

    @Test
    void noCyclesBetweenRooms() {
        slices().matching("org.tidegate.(**)").should().beFreeOfCycles().check(house);
    }

    @Test
    void theOutsideIsTouchedInOnePlaceEach() {
        assertOnlyIn("java.sql.", Set.of("store"));
        assertOnlyIn("org.springframework.", Set.of("console", "cli"));
        assertOnlyIn("jakarta.servlet.", Set.of("console", "cli"));
        assertOnlyIn("org.eclipse.angus.mail.imap.", Set.of("mailbox"));
        assertOnlyIn("org.eclipse.angus.mail.smtp.", Set.of("mailbox"));
    }

    @Test
    void theSystemClockIsReadInCliOnly() {
        Set<String> wrong = new TreeSet<>();
        for (JavaClass c : house) {
            if (roomOf(c).equals("cli")) {
                continue;
            }
            c.getMethodCallsFromSelf().stream()
                    .filter(call -> {
                        String owner = call.getTargetOwner().getName();
                        String name = call.getName();
                        int arguments = call.getTarget().getRawParameterTypes().size();
                        return (owner.startsWith("java.time.") && name.equals("now") && arguments == 0)
                                || (owner.equals("java.time.Clock") && name.startsWith("system"))
                                || (owner.equals("java.lang.System") && name.equals("currentTimeMillis"));
                    })
                    .forEach(call -> wrong.add(call.getDescription()));
        }
        assertThat(wrong).isEmpty();
    }

    private static void assertOnlyIn(String packagePrefix, Set<String> rooms) {
        List<String> wrong = house.stream()
                .filter(c -> !rooms.contains(roomOf(c)))
                .filter(c -> c.getDirectDependenciesFromSelf().stream()
                        .anyMatch(d ->
                                d.getTargetClass().getPackageName().concat(".").startsWith(packagePrefix)))
                .map(JavaClass::getName)
                .toList();
        assertThat(wrong).as(packagePrefix + " outside " + rooms).isEmpty();
    }

    /** The longest room name that the class's package starts with; empty outside the house. */
    private static String roomOf(JavaClass c) {
        String p = c.getPackageName();
        if (!p.startsWith(BASE)) {
            return "";
        }
        String rest = p.substring(BASE.length());
        return MAY_IMPORT.keySet().stream()
                .filter(room -> rest.equals(room) || rest.startsWith(room + "."))
                .max((a, b) -> Integer.compare(a.length(), b.length()))
                .orElse(rest);
    }

    @SafeVarargs
    private static Set<String> union(Set<String>... sets) {
        Set<String> all = new TreeSet<>();
        for (Set<String> s : sets) {
            all.addAll(s);
        }
        return Set.copyOf(all);
    }
}
