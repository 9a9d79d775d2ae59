package org.tidegate.examination;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.tidegate.booking.BookReader;
import org.tidegate.booking.BookResult;
import org.tidegate.finding.DeliveryFacts;
import org.tidegate.finding.Findings;
import org.tidegate.finding.Severity;
import org.tidegate.render.SamplePhoto;
import org.tidegate.rules.Rules;
import org.tidegate.rules.RulesReader;
import org.tidegate.rules.RulesResult;

/** From rendered photos to discrepancies: one cassette, two in one photo, two photos of one cassette. */
class SeveralCassettesTest {

    private static final Rules RULES = ((RulesResult.Loaded) RulesReader.bundled()).rules();
    private static final BookResult.Read BOOK =
            (BookResult.Read) BookReader.read(Path.of("sample-mailbox", "appointments.csv"));

    @Test
    void twoInOnePhotoAreHeld() throws IOException {
        assertThat(holds(photo(2))).contains("several-cassettes");
    }

    @Test
    void oneInEachOfTwoPhotosIsOne() throws IOException {
        assertThat(holds(
                        photo(1),
                        SamplePhoto.seed(77)
                                .card("MAREN", "TOLLISKER", "14 MAR 1988")
                                .jpeg()))
                .doesNotContain("several-cassettes");
    }

    private static byte[] photo(int cassettes) {
        return SamplePhoto.seed(21)
                .card("MAREN", "TOLLISKER", "14 MAR 1988")
                .cassettes(cassettes)
                .jpeg();
    }

    private static List<String> holds(byte[]... photos) throws IOException {
        Findings findings = new Inspector(RULES)
                .inspect(mail(photos), new DeliveryFacts(Optional.empty(), new byte[16], List.of()));
        OpenTests tests = OpenTests.of(BOOK.book().tests());
        return new SmallInbox(RULES, tests, List.of(), Set.of())
                .add(findings).discrepancies().stream()
                        .filter(d -> d.severity() == Severity.HOLD)
                        .map(d -> d.code().code())
                        .toList();
    }

    private static byte[] mail(byte[]... photos) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(("From: maren.tollisker@tarnpost.example\r\nSubject: Maren Tollisker 06:34 QUAY\r\n"
                        + "MIME-Version: 1.0\r\nContent-Type: multipart/mixed; boundary=b\r\n\r\n")
                .getBytes(StandardCharsets.US_ASCII));
        for (byte[] photo : photos) {
            out.write("--b\r\nContent-Type: image/jpeg\r\nContent-Transfer-Encoding: base64\r\n\r\n"
                    .getBytes(StandardCharsets.US_ASCII));
            out.write(Base64.getMimeEncoder().encode(photo));
            out.write("\r\n".getBytes(StandardCharsets.US_ASCII));
        }
        out.write("--b--\r\n".getBytes(StandardCharsets.US_ASCII));
        return out.toByteArray();
    }
}
