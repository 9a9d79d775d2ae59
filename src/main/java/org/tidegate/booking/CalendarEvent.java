package org.tidegate.booking;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.time.temporal.Temporal;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import net.fortuna.ical4j.model.Component;
import net.fortuna.ical4j.model.Parameter;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.property.DateProperty;

/**
 * The cells of one VEVENT. UID is {@code ref}, DTSTART and DTEND the slot, LOCATION the clinic, ATTENDEE the address and, by CN,
 * the name; every other column, and any of these, can be said by {@code X-TIDEGATE-} and the column's name with dashes.
 */
final class CalendarEvent {

    private static final String OWN = "X-TIDEGATE-";

    private final Component event;
    private final Map<String, String> cells = new TreeMap<>();

    CalendarEvent(Component event) {
        this.event = event;
        text(Property.UID, "ref");
        text(Property.LOCATION, "clinic");
        time(Property.DTSTART, "slot_start");
        time(Property.DTEND, "slot_end");
        attendee();
        Stream.concat(Columns.REQUIRED.stream(), Columns.OPTIONAL.stream())
                .forEach(column -> text(OWN + column.toUpperCase(Locale.ROOT).replace('_', '-'), column));
    }

    Map<String, String> cells() {
        return cells;
    }

    /** The columns that were guessed at: where one name ends and the other begins, a common name does not tell. */
    List<String> guesses() {
        boolean said = event.getProperty(OWN + "FAMILY-NAME").isPresent();
        return said || !cells.containsKey("family_name") ? List.of() : List.of("family_name");
    }

    private void text(String property, String column) {
        event.getProperty(property).map(Property::getValue).ifPresent(v -> cells.put(column, v));
    }

    private void time(String property, String column) {
        event.getProperty(property).ifPresent(p -> cells.put(column, moment(p)));
    }

    /** A time without a zone stays as it is written, and is refused like one in any other format. */
    private static String moment(Property property) {
        Temporal date = property instanceof DateProperty<?> d ? d.getDate() : null;
        if (date instanceof ZonedDateTime z) {
            return z.toOffsetDateTime().toString();
        }
        if (date instanceof Instant i) {
            return i.atOffset(ZoneOffset.UTC).toString();
        }
        return date instanceof OffsetDateTime o ? o.toString() : property.getValue();
    }

    private void attendee() {
        Optional<Property> attendee = event.getProperty(Property.ATTENDEE);
        attendee.map(Property::getValue)
                .map(v -> v.replaceFirst("(?i)^mailto:", ""))
                .ifPresent(v -> cells.put("email", v));
        attendee.flatMap(CalendarEvent::commonName).ifPresent(this::name);
    }

    private static Optional<String> commonName(Property attendee) {
        Optional<Parameter> name = attendee.getParameter(Parameter.CN);
        return name.map(Parameter::getValue);
    }

    private void name(String common) {
        String[] words = common.strip().split("\\s+");
        String given = String.join(" ", Arrays.copyOf(words, words.length - 1));
        cells.put("given_name", given);
        cells.put("family_name", words[words.length - 1]);
    }
}
