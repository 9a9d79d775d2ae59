package org.tidegate.examination.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tidegate.examination.timing.Scene.exif;
import static org.tidegate.examination.timing.Scene.gps;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tidegate.rules.LetterTexts;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** The page for a participant who disputes. */
class EnclosureTest {

    /** As much as one page ever has to hold: every clock speaks, two mail servers, a signature, a wrong phone. */
    private static Scene full() {
        return Scene.slot("11:00:00+01:00")
                .stated("11:04:00")
                .onCassette("11:03")
                .program("Kestrel Mail 8.2 (K5; phone)")
                .date("12:33:43", "+01:00")
                .arrived("12:26:50+01:00")
                .received("out2.fernpost.example", "192.0.2.156", "13:26:49+02:00")
                .received("smtp.fernpost.example", "192.0.2.156", "13:26:47+02:00")
                .signed("fernpost.example", "12:26:48+01:00")
                .photo("Kestrel", "K5", exif("11:52:51"), gps("10:44:40"));
    }

    @ParameterizedTest
    @CsvSource({
        "en, Your mail reached us too late.",
        "es, Tu correo nos llegó demasiado tarde.",
        "fr, Votre message nous est parvenu trop tard.",
        "pl, Twoja wiadomość dotarła do nas za późno."
    })
    void isOneWellFormedPageInEachLanguage(String language, String verdict) throws Exception {
        Element page = page(full(), language);
        assertThat(page.getAttribute("height")).as("A4 at 96 dots an inch").isEqualTo("1120");
        assertThat(Integer.parseInt(page.getAttribute("viewBox").split(" ")[3]))
                .as("hardly smaller than printed text")
                .isLessThan(1200);
        LetterTexts letters = Scene.RULES.texts().forLanguage(language);
        assertThat(text(page))
                .contains(verdict)
                .contains(letters.enclosure().headings().challenge().text())
                .contains(letters.caution().text())
                .contains("999", "+44 1632 960110")
                .doesNotContain("{", "}");
    }

    /** Read back by PDFBox's text extraction: one page that holds what the drawing holds, letters beyond Latin-1 too. */
    @ParameterizedTest
    @ValueSource(strings = {"en", "es", "fr", "pl"})
    void isOnePageOfPdfWithTheSameWords(String language) throws Exception {
        Scene full = full();
        byte[] pdf = new Enclosure(full.build(), full.judge(), Scene.RULES, language).pdf();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(document.getNumberOfPages()).isOne();
            assertThat(document.getDocumentCatalog().getLanguage()).isEqualTo(language);
            String read = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
            for (String line : lines(page(full(), language))) {
                assertThat(read).contains(line.replaceAll("\\s+", " ").strip());
            }
            assertThat(read).doesNotContain("?");
        }
    }

    @Test
    void aServerMayCallItselfAnything() throws Exception {
        Scene odd = full().received("\u6d77\u95e8.example", "192.0.2.156", "13:26:46+02:00");
        byte[] pdf = new Enclosure(odd.build(), odd.judge(), Scene.RULES, "en").pdf();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(document.getNumberOfPages()).isOne();
        }
    }

    @Test
    void marksWhatDecides() throws Exception {
        String text = text(page(full(), "en"));
        assertThat(text)
                .contains("● Our clock: our server took your mail at 12:26:50.")
                .contains("○ Your mail: the server smtp.fernpost.example took it at 12:26:47.");
    }

    @Test
    void tellsTheFiguresOfAnEarlyPhoto() throws Exception {
        Scene early = Scene.timer("07:00:00+01:00")
                .program("Brae Webmail 3.2")
                .arrived("07:13:00+01:00")
                .photo("", "");
        assertThat(text(page(early, "en")))
                .contains(
                        "● Your timer: our observer started it between 06:59:00 and 07:01:00.",
                        "here between 07:20 and 07:30. We allow 1 min either way. The mail must reach us by 07:50.",
                        "Your photo was taken too early.",
                        "The photo was taken at most 14 min 11 s after the test began.",
                        "Your mail reached us in time.");
    }

    private static Element page(Scene scene, String language) throws Exception {
        String svg = new Enclosure(scene.build(), scene.judge(), Scene.RULES, language).svg();
        Document document = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
        return document.getDocumentElement();
    }

    private static String text(Element page) {
        return String.join(" ", lines(page));
    }

    private static List<String> lines(Element page) {
        NodeList lines = page.getElementsByTagName("text");
        return IntStream.range(0, lines.getLength())
                .mapToObj(i -> lines.item(i).getTextContent())
                .toList();
    }
}
