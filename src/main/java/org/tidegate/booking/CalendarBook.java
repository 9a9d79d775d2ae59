package org.tidegate.booking;

import java.io.IOException;
import java.io.StringReader;
import java.time.DateTimeException;
import java.util.ArrayList;
import java.util.List;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.data.ParserException;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Component;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.component.CalendarComponent;

/** A book as iCalendar (RFC 5545): a VEVENT a test. {@link CalendarEvent} tells which property is which column. */
final class CalendarBook {

    private final BookBuilder book = new BookBuilder();

    private CalendarBook() {}

    static BookResult read(String text) throws IOException {
        CalendarBook reader = new CalendarBook();
        try {
            Calendar calendar = new CalendarBuilder().build(new StringReader(text));
            reader.events(calendar, eventLines(text));
        } catch (ParserException e) {
            reader.book.fault(e.getLineNo(), "", "this is not iCalendar: " + e.getMessage(), "");
        } catch (IllegalArgumentException | DateTimeException e) {
            reader.book.fault(0, "", "the calendar holds a value that cannot be read: " + e.getMessage(), "");
        }
        return reader.book.result();
    }

    private void events(Calendar calendar, List<Integer> lines) {
        List<CalendarComponent> events = calendar.getComponents(Component.VEVENT);
        for (int i = 0; i < events.size(); i++) {
            long line = i < lines.size() ? lines.get(i) : 0;
            if (!event(events.get(i), line)) {
                return;
            }
        }
    }

    private boolean event(CalendarComponent event, long line) {
        if (has(event, Property.STATUS, "CANCELLED")) {
            book.warn(line, "", "a cancelled event was left out", "");
            return true;
        }
        if (event.getProperty(Property.RRULE).isPresent()) {
            book.fault(line, "", "the event repeats", "book each test on its own");
            return true;
        }
        CalendarEvent facts = new CalendarEvent(event);
        facts.guesses()
                .forEach(g -> book.warn(line, g, "was told from the attendee's name", "X-TIDEGATE-… says it surely"));
        return book.add(line, facts.cells());
    }

    private static boolean has(CalendarComponent event, String property, String value) {
        return event.getProperty(property)
                .filter(p -> value.equalsIgnoreCase(p.getValue()))
                .isPresent();
    }

    /** The parser keeps no line numbers; events stand in the file's order. */
    private static List<Integer> eventLines(String text) {
        List<Integer> found = new ArrayList<>();
        List<String> lines = text.lines().toList();
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).strip().equalsIgnoreCase("BEGIN:VEVENT")) {
                found.add(i + 1);
            }
        }
        return found;
    }
}
