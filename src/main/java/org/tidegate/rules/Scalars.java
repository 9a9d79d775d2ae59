package org.tidegate.rules;

import java.time.DateTimeException;
import java.time.Duration;
import java.time.LocalTime;
import java.time.Period;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.tidegate.finding.DiscrepancyCode;

/** Every kind of single value that a rule file may hold. */
final class Scalars {

    /**
     * @param expected how a person would describe it, with an example
     * @param parse throws {@link IllegalArgumentException} or {@link DateTimeException} where the text is no such value
     */
    record Kind(String expected, Function<String, Object> parse) {}

    private static final Map<Class<?>, Kind> KINDS = Map.ofEntries(
            Map.entry(String.class, new Kind("text", s -> s)),
            Map.entry(boolean.class, new Kind("true or false", Scalars::bool)),
            Map.entry(int.class, new Kind("a whole number", s -> Integer.valueOf(s.replace("_", "")))),
            Map.entry(long.class, new Kind("a whole number", s -> Long.valueOf(s.replace("_", "")))),
            Map.entry(Integer.class, new Kind("a whole number", s -> Integer.valueOf(s.replace("_", "")))),
            Map.entry(double.class, new Kind("a number", Scalars::number)),
            Map.entry(Double.class, new Kind("a number", Scalars::number)),
            Map.entry(Duration.class, new Kind("a duration such as PT20M (ISO 8601), not negative", Scalars::duration)),
            Map.entry(Period.class, new Kind("a period such as P30D or P8Y (ISO 8601)", Period::parse)),
            Map.entry(LocalTime.class, new Kind("a time of day such as 07:00", LocalTime::parse)),
            Map.entry(ZoneId.class, new Kind("a time zone such as Europe/London (IANA)", ZoneId::of)),
            Map.entry(Template.class, new Kind("a text of a letter", Template::new)),
            Map.entry(Condition.class, new Kind("a CEL condition over the evidence e", Condition::of)),
            Map.entry(DiscrepancyCode.class, new Kind("a discrepancy code such as read-early", Scalars::code)));

    private Scalars() {}

    static Optional<Kind> kind(Class<?> type) {
        return type.isEnum() && type != DiscrepancyCode.class
                ? Optional.of(enumKind(type))
                : Optional.ofNullable(KINDS.get(type));
    }

    private static Kind enumKind(Class<?> type) {
        Map<String, Object> byName = Arrays.stream(type.getEnumConstants())
                .collect(Collectors.toMap(c -> ((Enum<?>) c).name().toLowerCase(Locale.ROOT), Function.identity()));
        List<String> names = byName.keySet().stream().sorted().toList();
        String expected = "one of " + String.join(", ", names);
        return new Kind(
                expected,
                s -> Optional.ofNullable(byName.get(s.replace('-', '_')))
                        .orElseThrow(() -> new IllegalArgumentException(expected)));
    }

    private static Object bool(String s) {
        return switch (s) {
            case "true" -> true;
            case "false" -> false;
            default -> throw new IllegalArgumentException(s);
        };
    }

    private static Object number(String s) {
        double d = Double.parseDouble(s);
        if (!Double.isFinite(d)) {
            throw new IllegalArgumentException(s);
        }
        return d;
    }

    private static Object duration(String s) {
        Duration d = Duration.parse(s);
        if (d.isNegative()) {
            throw new IllegalArgumentException(s);
        }
        return d;
    }

    private static Object code(String s) {
        return DiscrepancyCode.ofCode(s).orElseThrow(() -> new IllegalArgumentException(s));
    }
}
