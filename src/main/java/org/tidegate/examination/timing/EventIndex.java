package org.tidegate.examination.timing;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tidegate.finding.Event;

/** Numbers the events that a set of constraints speaks about, {@link Event#EPOCH} first. */
final class EventIndex {

    private final Map<Event, Integer> numbers = new LinkedHashMap<>();
    private final List<Event> events;

    EventIndex(List<Constraint> constraints) {
        number(Event.EPOCH);
        for (Constraint c : constraints) {
            number(c.clue().earlier());
            number(c.clue().later());
        }
        events = List.copyOf(numbers.keySet());
    }

    private void number(Event event) {
        numbers.putIfAbsent(event, numbers.size());
    }

    int size() {
        return events.size();
    }

    boolean knows(Event event) {
        return numbers.containsKey(event);
    }

    int of(Event event) {
        Integer number = numbers.get(event);
        if (number == null) {
            throw new IllegalArgumentException("no constraint speaks about " + event);
        }
        return number;
    }

    Event event(int number) {
        return events.get(number);
    }
}
