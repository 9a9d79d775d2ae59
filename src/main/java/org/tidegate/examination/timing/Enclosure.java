package org.tidegate.examination.timing;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.tidegate.booking.TestRecord;
import org.tidegate.rules.EnclosureTexts;
import org.tidegate.rules.LetterTexts;
import org.tidegate.rules.Rules;
import org.tidegate.rules.Template;

/**
 * One printable page for a participant who disputes a verdict on time: timer, photo, the mail's journey and our clock in one drawing and
 * in words, the rule, what follows from it, what was taken for granted, how to challenge it, and the cautions. In the language of the
 * texts; A4, black on white.
 */
public final class Enclosure {

    private static final int WIDTH = 794;
    private static final int HEIGHT = 1120;
    private static final int LEFT = 60;
    private static final int LINE = WIDTH - 2 * LEFT;
    private static final int SIZE = 12;
    private static final int STEP = 15;
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

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

    /** The page as an SVG document. */
    public String svg() {
        Svg page = new Svg();
        EnclosureTexts texts = letters.enclosure();
        page.text(LEFT, 50, 20, true, texts.headings().title().text());
        int y = paragraph(page, texts.about().fill(values()), 90);
        y = drawing(page, y + 6);
        y = paragraph(page, texts.legend().text(), y + 8);
        for (Section section : sections()) {
            y = section(page, section, y);
        }
        return onOnePage(page, y + 24);
    }

    /** What is longer than a page is made smaller. */
    private String onOnePage(Svg page, int used) {
        int high = Math.max(HEIGHT, used);
        int wide = WIDTH * high / HEIGHT;
        String title = letters.enclosure().headings().title().text();
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" xml:lang=\"%s\" viewBox=\"%d 0 %d %d\" width=\"%d\" height=\"%d\""
                        .formatted(language, (WIDTH - wide) / 2, wide, high, WIDTH, HEIGHT)
                + " font-family=\"sans-serif\"><title>" + Svg.escaped(title) + "</title>"
                + "<style>@page{size:A4;margin:0}</style><rect x=\"-50%\" width=\"200%\" height=\"100%\" fill=\"#fff\"/>"
                + page + "</svg>\n";
    }

    /** A heading with its paragraphs. */
    private record Section(String heading, List<String> paragraphs) {}

    private List<Section> sections() {
        EnclosureTexts texts = letters.enclosure();
        EnclosureTexts.Headings headings = texts.headings();
        Map<String, String> values = values();
        List<Section> sections = new ArrayList<>();
        sections.add(new Section(headings.evidence().text(), clues()));
        sections.add(new Section(headings.rule().text(), List.of(texts.rule().fill(values))));
        sections.add(new Section(
                headings.verdicts().text(),
                List.of(String.join(" ", new EnclosureVerdicts(texts.verdicts(), judgement).sentences()))));
        sections.add(new Section(headings.assumed().text(), List.of(String.join("; ", assumed()) + ".")));
        sections.add(new Section(headings.challenge().text(), filled(texts.challenge(), values)));
        sections.add(
                new Section("", filled(List.of(letters.urgentHelp(), letters.caution(), letters.signature()), values)));
        return sections;
    }

    private static List<String> filled(List<Template> templates, Map<String, String> values) {
        return templates.stream().map(t -> t.fill(values)).toList();
    }

    private List<String> clues() {
        boolean timer = submission.test().timerStart().isPresent();
        return TimeDrawing.drawn(submission, judgement, rules.timing()).stream()
                .map(c -> words.clue(c, timer) + (c.deciding() ? " ●" : ""))
                .distinct()
                .toList();
    }

    private List<String> assumed() {
        return Stream.concat(judgement.photo().stream(), Stream.of(judgement.sent()))
                .flatMap(v -> v.assumptions().stream())
                .distinct()
                .map(words::assumed)
                .toList();
    }

    private int drawing(Svg page, int y) {
        Svg drawn = new Svg();
        int height = new TimeDrawing(judgement, TimeDrawing.drawn(submission, judgement, rules.timing()), zone(), words)
                .draw(drawn, LINE);
        page.raw("<g transform=\"translate(%d %d)\">".formatted(LEFT, y) + drawn + "</g>");
        return y + height;
    }

    private static int section(Svg page, Section section, int y) {
        int next = y + 14;
        if (!section.heading().isEmpty()) {
            page.text(LEFT, next + 10, 14, true, section.heading());
            next += 14;
        }
        for (String paragraph : section.paragraphs()) {
            next = paragraph(page, paragraph, next + STEP);
        }
        return next;
    }

    /** Lines from {@code y} on; returns where the last one stands. */
    private static int paragraph(Svg page, String text, int y) {
        int at = y;
        for (String line : Svg.wrapped(text, SIZE, LINE)) {
            page.text(LEFT, at, SIZE, false, line);
            at += STEP;
        }
        return at - STEP;
    }

    private Map<String, String> values() {
        TestRecord test = submission.test();
        Map<String, String> values = new TreeMap<>();
        values.put("ref", test.appointment().ref());
        values.put("clinic", test.appointment().clinic());
        values.put("kit", test.kit());
        values.put("service", rules.service().name());
        values.put("clinic_phone", rules.service().phone());
        values.put("urgent_number", rules.service().urgentNumber());
        values.put(
                "test_date",
                DateTimeFormatter.ISO_LOCAL_DATE.format(
                        test.appointment().slotStart().atZoneSameInstant(zone())));
        values.put("photograph_from", CLOCK.format(judgement.windows().from().atZone(zone())));
        values.put("photograph_until", CLOCK.format(judgement.windows().until().atZone(zone())));
        values.put("send_by", CLOCK.format(judgement.windows().sendBy().atZone(zone())));
        return values;
    }
}
