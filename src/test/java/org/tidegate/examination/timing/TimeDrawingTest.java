package org.tidegate.examination.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tidegate.examination.timing.Scene.exif;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;

/** The drawing says in its text what it shows, and is well-formed. */
class TimeDrawingTest {

    @Test
    void drawsEveryClockAndMarksWhatDecides() throws Exception {
        TimeCase c = Scene.timer("11:03:46+01:00")
                .program("Kestrel Mail 8.2 (K5; phone)")
                .date("11:36:43", "+01:00")
                .arrived("11:29:50+01:00")
                .received("smtp.<fernpost>.example", "192.0.2.156", "12:29:47+02:00")
                .photo("Kestrel", "K5", exif("11:35:51"))
                .build();
        TimeJudge judge = new TimeJudge(Scene.RULES.timing());
        TimeJudgement judgement = judge.judge(c);
        TimeDrawing drawing = TimeDrawing.of(c, judgement, Scene.RULES.timing());
        assertThat(drawing.text())
                .contains(
                        "the clinic's record: test from 11:02:46 to 11:04:46 (decides)",
                        "our mail server: arrived at 11:29:50 (decides)",
                        "smtp.<fernpost>.example: taken over at 11:29:47 (decides)",
                        "the clock of the Kestrel K5: photo at 11:35:51 (decides)",
                        "photograph from 11:23:46 to 11:33:46, send by 11:53:46");
        String svg = drawing.svg(900);
        DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
        assertThat(svg).contains("role=\"img\"", "<title>", "<desc>");
    }
}
