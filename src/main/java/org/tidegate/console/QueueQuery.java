package org.tidegate.console;

import java.text.Normalizer;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.temporal.TemporalAccessor;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.web.util.UriComponentsBuilder;
import org.tidegate.booking.TestRecord;
import org.tidegate.casework.QueueRow;
import org.tidegate.finding.DiscrepancyCode;

/**
 * What a person wants to see of the queue.
 *
 * @param lane only this lane
 * @param kind only what this discrepancy holds
 * @param words each must occur in name, reference, number, address or date; accents and case do not count
 * @param page from 1
 */
record QueueQuery(Optional<LaneKey> lane, Optional<DiscrepancyCode> kind, String words, int page) {

    private static final int LONGEST = 200;
    private static final int LAST_PAGE = 100_000;
    private static final List<DateTimeFormatter> DATES = Stream.of(
                    "uuuu-MM-dd", "d MMMM uuuu", "d MMM", "dd.MM.uuuu", "dd/MM/uuuu", "HH:mm")
            .map(p -> DateTimeFormatter.ofPattern(p, Locale.ENGLISH))
            .toList();

    /** Lenient: what is not understood filters nothing. */
    static QueueQuery of(String lane, String kind, String words, String page) {
        return new QueueQuery(
                LaneKey.ofCode(lane),
                DiscrepancyCode.ofCode(kind),
                words.strip().substring(0, Math.min(LONGEST, words.strip().length())),
                number(page));
    }

    private static int number(String page) {
        try {
            return Math.max(1, Math.min(LAST_PAGE, Integer.parseInt(page)));
        } catch (NumberFormatException e) {
            return 1;
        }
    }

    public boolean narrows() {
        return lane.isPresent() || kind.isPresent() || !words.isEmpty();
    }

    boolean inLane(QueueRow row) {
        return lane.isEmpty() || lane.get() == LaneKey.of(row);
    }

    boolean ofKind(QueueRow row) {
        return kind.isEmpty() || row.holds().stream().anyMatch(d -> d.code() == kind.get());
    }

    boolean found(QueueRow row, ZoneId zone) {
        if (words.isEmpty()) {
            return true;
        }
        String text = text(row, zone);
        return Arrays.stream(folded(words).split("\\s+")).allMatch(text::contains);
    }

    private static String text(QueueRow row, ZoneId zone) {
        String test = row.test().map(QueueQuery::booked).orElse("");
        return folded(String.join(
                " ",
                List.of(
                        row.who(),
                        row.id().toString(),
                        String.join(" ", row.addresses()),
                        test,
                        dates(row.arrived().atZone(zone)))));
    }

    private static String booked(TestRecord t) {
        OffsetDateTime slot = t.appointment().slotStart();
        return t.key() + " " + t.appointment().fullName() + " "
                + t.appointment().clinic() + " " + dates(slot);
    }

    /** As people may write it. */
    private static String dates(TemporalAccessor time) {
        return DATES.stream().map(d -> d.format(time)).collect(Collectors.joining(" "));
    }

    private static String folded(String text) {
        return Normalizer.normalize(text, Normalizer.Form.NFKD)
                .replaceAll("\\p{M}", "")
                .toLowerCase(Locale.ROOT);
    }

    public String link() {
        return link("/queue", lane, kind, page);
    }

    public String linkToPage(int other) {
        return link("/queue", lane, kind, other);
    }

    String linkToLane(Optional<LaneKey> other) {
        return link("/queue", other, kind, 1);
    }

    String linkToKind(Optional<DiscrepancyCode> other) {
        return link("/queue", lane, other, 1);
    }

    public String linkToNews() {
        return link("/queue/news", lane, kind, page);
    }

    private String link(String path, Optional<LaneKey> inLane, Optional<DiscrepancyCode> ofKind, int onPage) {
        UriComponentsBuilder b = UriComponentsBuilder.fromPath(path);
        inLane.ifPresent(l -> b.queryParam("lane", l.code()));
        ofKind.ifPresent(k -> b.queryParam("kind", k.code()));
        if (!words.isEmpty()) {
            b.queryParam("words", "{words}");
        }
        if (onPage > 1) {
            b.queryParam("page", onPage);
        }
        return words.isEmpty()
                ? b.build().toUriString()
                : b.encode().buildAndExpand(words).toUriString();
    }
}
