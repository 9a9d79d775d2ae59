package org.tidegate.examination.subject;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tidegate.examination.subject.Candidate.Days;
import org.tidegate.examination.subject.Candidate.Field;
import org.tidegate.finding.SubjectReading;
import org.tidegate.finding.SubjectReading.Source;
import org.tidegate.finding.SubjectReading.Span;
import org.tidegate.rules.WordKind;

/** Turns covers of a line into readings. */
final class Readings {

    /** What it costs to find no test time, or no name. */
    private static final double MISSING = 3.6;

    /** What it costs to find a time that no day fits which was stated with it: last night, at 10 in the morning. */
    private static final double CONTRADICTION = 12;

    private final Line line;
    private final Source source;
    private final Sender sender;
    private final Resolver resolver;
    private final boolean cut;
    private final boolean notice;
    private final boolean business;

    Readings(Line line, Source source, Sender sender, Resolver resolver, boolean cut) {
        this.line = line;
        this.source = source;
        this.sender = sender;
        this.resolver = resolver;
        this.cut = cut;
        this.notice = sender.machine() || says(WordKind.NOTICE);
        this.business = says(WordKind.BUSINESS);
    }

    private boolean says(WordKind kind) {
        for (int i = 0; i < line.size(); i++) {
            if (line.length(i, kind) > 0) {
                return true;
            }
        }
        return false;
    }

    /** A reading before it is written out; most never are. */
    record Draft(Map<Field, Candidate> parts, Optional<LocalDateTime> time, double cost) {

        boolean sameAs(Draft other) {
            return time.equals(other.time)
                    && text(parts, Field.NAME).equals(text(other.parts, Field.NAME))
                    && text(parts, Field.CLINIC).equals(text(other.parts, Field.CLINIC));
        }
    }

    List<Draft> of(Cover.Whole whole) {
        Map<Field, Candidate> parts = new EnumMap<>(Field.class);
        whole.parts().forEach(c -> parts.putIfAbsent(c.field(), c));
        if (notice || business && !supported(parts.get(Field.NAME))) {
            parts.remove(Field.NAME);
        }
        Optional<ClockTime> clock = value(parts, Field.TIME, ClockTime.class);
        if (clock.isEmpty()) {
            return List.of(timeless(parts, whole.cost() + MISSING));
        }
        List<Resolver.Resolved> days = resolver.resolve(
                clock.get(),
                value(parts, Field.DATE, StatedDate.class),
                value(parts, Field.WEEKDAY, Days.class),
                value(parts, Field.PERIOD, Days.class));
        if (days.isEmpty()) {
            parts.remove(Field.TIME);
            return List.of(timeless(parts, whole.cost() + MISSING + CONTRADICTION));
        }
        return days.stream()
                .map(r -> draft(parts, Optional.of(r.wall()), whole.cost() + r.cost()))
                .toList();
    }

    private Draft timeless(Map<Field, Candidate> parts, double cost) {
        if (doubtfulAlone(parts.get(Field.NAME))) {
            parts.remove(Field.NAME);
        }
        return draft(parts, Optional.empty(), cost);
    }

    private static Draft draft(Map<Field, Candidate> parts, Optional<LocalDateTime> time, double cost) {
        return new Draft(parts, time, parts.containsKey(Field.NAME) ? cost : cost + MISSING);
    }

    /** Without a time beside it, one word or words in lower case are a name only where the sender bears it. */
    private boolean doubtfulAlone(@Nullable Candidate name) {
        if (name == null || supported(name)) {
            return false;
        }
        int capitals = 0;
        for (int i = name.from(); i < name.to(); i++) {
            boolean capital = line.isWord(i)
                    && !Character.isLowerCase(line.token(i).text().codePointAt(0));
            capitals += capital ? 1 : 0;
        }
        return capitals < 2;
    }

    private boolean supported(@Nullable Candidate name) {
        if (name == null) {
            return false;
        }
        for (int i = name.from(); i < name.to(); i++) {
            if (line.isWord(i)
                    && line.meaning(i).unknown()
                    && sender.names(line.token(i).key())) {
                return true;
            }
        }
        return false;
    }

    private static <T> Optional<T> value(Map<Field, Candidate> parts, Field field, Class<T> type) {
        return Optional.ofNullable(parts.get(field))
                .map(Candidate::value)
                .filter(type::isInstance)
                .map(type::cast);
    }

    SubjectReading reading(Draft draft) {
        Map<Field, Candidate> parts = draft.parts();
        Optional<LocalDateTime> time = draft.time();
        Optional<String> name = text(parts, Field.NAME);
        Optional<String> zone = value(parts, Field.TIME, ClockTime.class).flatMap(ClockTime::zoneText);
        boolean dated = parts.containsKey(Field.DATE) || parts.containsKey(Field.WEEKDAY);
        return new SubjectReading(
                source,
                name,
                time,
                zone,
                dated,
                text(parts, Field.CLINIC),
                text(parts, Field.REFERENCE).map(r -> r.toUpperCase(Locale.ROOT)),
                text(parts, Field.MARK).map(r -> r.toUpperCase(Locale.ROOT)),
                birth(parts),
                text(parts, Field.CLAIM),
                draft.cost(),
                spans(parts),
                problems(name, time));
    }

    private static Optional<String> text(Map<Field, Candidate> parts, Field field) {
        return value(parts, field, Candidate.Words.class).map(Candidate.Words::text);
    }

    private static Optional<LocalDate> birth(Map<Field, Candidate> parts) {
        return value(parts, Field.BIRTH, StatedDate.class)
                .map(d -> d.options().get(0))
                .map(StatedDate.Calendar.class::cast)
                .map(c -> LocalDate.of(c.year(), c.month(), c.day()));
    }

    private List<Span> spans(Map<Field, Candidate> parts) {
        List<Span> spans = new ArrayList<>();
        parts.forEach((field, c) -> spans.add(new Span(
                field.name().toLowerCase(Locale.ROOT), line.originStart(c.from()), line.originEnd(c.to() - 1))));
        return List.copyOf(spans);
    }

    private List<String> problems(Optional<String> name, Optional<LocalDateTime> time) {
        List<String> problems = new ArrayList<>();
        if (notice) {
            problems.add("written by a mail program");
        }
        if (name.isEmpty()) {
            problems.add("no name found");
        }
        if (time.isEmpty()) {
            problems.add("no test time found");
        }
        if (cut) {
            problems.add("the text is too long to be read whole: only its beginning was");
        }
        return List.copyOf(problems);
    }
}
