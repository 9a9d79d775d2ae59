package org.tidegate.casework;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tidegate.casework.ActionResult.Done;
import org.tidegate.casework.ActionResult.Forbidden;
import org.tidegate.casework.ActionResult.Refused;
import org.tidegate.work.Enclosed;
import org.tidegate.work.LetterKind;
import org.tidegate.work.LetterText;
import org.tidegate.work.OutboxLetter;
import org.tidegate.work.SubmissionId;
import org.tidegate.work.SubmissionState;

/** The page on the times, sent to someone who doubts them. */
class ExplainingTest {

    @TempDir
    Path folder;

    private SampleDesk sample;
    private Desk desk;

    @BeforeEach
    void open() throws IOException {
        sample = new SampleDesk(folder, SampleDesk.MORNING);
        desk = sample.desk();
    }

    @AfterEach
    void close() {
        sample.close();
    }

    @Test
    void goesToTheBookedAddressWithThePageAndChangesNothingElse() throws IOException {
        SubmissionId id = sample.take("12-sent-late.eml");
        Ticket before = sample.ticket(id);
        assertThat(desk.explaining().send(SampleDesk.OPERATOR, before)).isInstanceOf(Done.class);
        assertThat(sample.ticket(id)).isEqualTo(before);
        assertThat(sample.now(id).state()).isEqualTo(SubmissionState.HELD);
        LetterText text = times(id).text().orElseThrow();
        assertThat(text.to())
                .isEqualTo(desk.replying()
                        .draft(id, Optional.empty())
                        .orElseThrow()
                        .to()
                        .orElseThrow());
        assertThat(text.text()).contains("Zasady miejscowej służby zdrowia są ważniejsze", "999\u00a0/\u00a0112");
        Enclosed page = text.enclosed().orElseThrow();
        try (PDDocument pdf = Loader.loadPDF(page.content())) {
            assertThat(new PDFTextStripper().getText(pdf)).contains("Twoja wiadomość dotarła do nas za późno");
        }
    }

    @Test
    void isNotSentTwiceByTwoClicks() {
        SubmissionId id = sample.take("12-sent-late.eml");
        ActionResult first = desk.explaining().send(SampleDesk.OPERATOR, sample.ticket(id));
        assertThat(desk.explaining().send(SampleDesk.OTHER_OPERATOR, sample.ticket(id)))
                .isInstanceOfSatisfying(Refused.class, r -> assertThat(r.code()).isEqualTo("on-its-way"));
        desk.outbox().recall(SampleDesk.OPERATOR, ((Done) first).letter().orElseThrow());
        assertThat(desk.explaining().send(SampleDesk.OPERATOR, sample.ticket(id)))
                .isInstanceOf(Done.class);
    }

    @Test
    void nothingGoesWhereNoTimesWereJudgedOrNoOneMayAsk() {
        SubmissionId unknown = sample.take("23-question.eml");
        assertThat(desk.explaining().send(SampleDesk.OPERATOR, sample.ticket(unknown)))
                .isInstanceOf(Refused.class);
        SubmissionId late = sample.take("12-sent-late.eml");
        assertThat(desk.explaining().send(SampleDesk.AUDITOR, sample.ticket(late)))
                .isInstanceOf(Forbidden.class);
        assertThat(List.of(unknown, late))
                .allSatisfy(id -> assertThat(desk.outbox().of(id)).isEmpty());
    }

    private OutboxLetter times(SubmissionId id) {
        return desk.outbox().of(id).stream()
                .filter(l -> l.kind() == LetterKind.TIMES)
                .findFirst()
                .orElseThrow();
    }
}
