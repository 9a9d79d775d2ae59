package org.tidegate.examination.timing;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.tidegate.booking.TestRecord;
import org.tidegate.rules.EnclosureTexts;
import org.tidegate.rules.LetterTexts;
import org.tidegate.rules.Rules;

/**
 * One printable page for a participant who disputes a verdict on time: timer, photo, the mail's journey and our clock in one drawing and
 * in words, the rule, what follows from it, what was taken for granted, how to challenge it, and the cautions. In the language of the
 * texts; A4, black on white.
 */
public final class Enclosure {

    /** Sizes of the text to try, the most legible first. */
    private static final List<Integer> SIZES = List.of(15, 14, 13, 12);

    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
    private static final DateTimeFormatter TO_THE_SECOND = DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);

    private final TimeCase submission;
    private final TimeJudgement judgement;
    private final Rules rules;
    private final String language;
    private final LetterTexts letters;
    private final EnclosureWords words;

    /**
     * @param judgement as {@link TimeJudge} gave it for the case under the same rules
     * @param language BCP 47 tag; the first language of the rules where there are no texts in it
     */
    public Enclosure(TimeCase submission, TimeJudgement judgement, Rules rules, String language) {
        this.submission = submission;
        this.judgement = judgement;
        this.rules = rules;
        this.language = rules.texts().languageFor(language);
        this.letters = rules.texts().forLanguage(language);
        this.words = new EnclosureWords(letters.enclosure(), zone());
    }

    private ZoneId zone() {
        return rules.timing().zone();
    }

    /** The page as an SVG document, in the largest print that fits. */
    public String svg() {
        return fitted().svg(language, title());
    }

    /** The page as a PDF document, as a mail program on any phone shows it. */
    public byte[] pdf() {
        return fitted().pdf(language, title());
    }

    private String title() {
        return letters.enclosure().headings().title().text();
    }

    private PrintedPage fitted() {
        PrintedPage page = laid(SIZES.get(0));
        for (int i = 1; !page.fits() && i < SIZES.size(); i++) {
            page = laid(SIZES.get(i));
        }
        return page;
    }

    private PrintedPage laid(int size) {
        PrintedPage page = new PrintedPage(size);
        EnclosureTexts texts = letters.enclosure();
        Map<String, String> values = values();
        page.title(texts.headings().title().text());
        page.paragraph(texts.about().fill(values));
        evidence(page, texts);
        page.heading(texts.headings().rule().text());
        page.paragraph(texts.rule().fill(values));
        page.heading(texts.headings().verdicts().text());
        new EnclosureVerdicts(texts.verdicts(), judgement).told().forEach(said -> {
            page.strong(said.verdict());
            page.paragraph(String.join(" ", said.figures()));
        });
        page.heading(texts.headings().assumed().text());
        page.paragraph(String.join("; ", assumed()) + ".");
        page.heading(texts.headings().challenge().text());
        texts.challenge().forEach(t -> page.paragraph(t.fill(values)));
        page.gap();
        Stream.of(letters.urgentHelp(), letters.caution(), letters.signature())
                .forEach(t -> page.paragraph(t.fill(values)));
        return page;
    }

    private void evidence(PrintedPage page, EnclosureTexts texts) {
        List<DrawnClue> clues = TimeDrawing.drawn(submission, judgement, rules.timing());
        Drawing drawing = new Drawing();
        page.drawn(drawing, new TimeDrawing(judgement, clues, zone(), words).draw(drawing, PrintedPage.LINE));
        page.paragraph(texts.legend().text());
        page.heading(texts.headings().evidence().text());
        boolean timer = submission.test().timerStart().isPresent();
        clues.forEach(c -> page.marked(c.deciding(), words.clue(c, timer)));
    }

    private List<String> assumed() {
        return Stream.concat(judgement.photo().stream(), Stream.of(judgement.sent()))
                .flatMap(v -> v.assumptions().stream())
                .distinct()
                .map(words::assumed)
                .toList();
    }

    private Map<String, String> values() {
        TestRecord test = submission.test();
        Map<String, String> values = new TreeMap<>();
        values.put("ref", test.appointment().ref());
        values.put("clinic", test.appointment().clinic());
        values.put("kit", test.kit());
        values.put("read_from", Wording.span(submission.protocol().readFrom()));
        values.put("read_until", Wording.span(submission.protocol().readUntil()));
        values.put("grace", Wording.span(rules.timing().grace()));
        values.put("service", rules.service().name());
        values.put("clinic_phone", rules.service().phone());
        values.put("urgent_number", rules.service().urgentNumber());
        values.put(
                "test_date",
                DateTimeFormatter.ISO_LOCAL_DATE.format(
                        test.appointment().slotStart().atZoneSameInstant(zone())));
        values.put("photograph_from", clock(judgement.windows().from()));
        values.put("photograph_until", clock(judgement.windows().until()));
        values.put("send_by", clock(judgement.windows().sendBy()));
        return values;
    }

    /** Seconds only where there are some. */
    private String clock(Instant time) {
        return (time.getEpochSecond() % 60 == 0 ? CLOCK : TO_THE_SECOND).format(time.atZone(zone()));
    }
}
