package org.tidegate.message;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tidegate.message.SampleMail.jpeg;
import static org.tidegate.message.SampleMail.mail;
import static org.tidegate.message.SampleMail.part;
import static org.tidegate.message.SampleMail.zip;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AttachedFilesTest {

    private static MailMessage read(byte[] mail) {
        return MessageReader.read(mail, Limits.standard());
    }

    private static List<String> files(MailMessage message) {
        return message.attachments().stream()
                .map(a -> a.path() + " " + a.type() + " " + a.container())
                .toList();
    }

    @Test
    void tellsTypesByContentNotByClaim() {
        assertThat(files(read(mail(
                        part("application/octet-stream", "x.heic", jpeg()),
                        part("image/jpeg", "a.jpg", zip(Map.of()))))))
                .containsExactly("2 image/jpeg MESSAGE", "3 application/zip MESSAGE");
    }

    @Test
    void handsOverThePhotoInAPdfUntouched() {
        MailMessage message = read(mail(part("application/pdf", "scan.pdf", SampleMail.pdf(""))));
        assertThat(files(message))
                .containsExactly(
                        "2 application/pdf MESSAGE",
                        "2/page-1/image-0 image/jpeg PDF",
                        "2/page-1/image-1 image/png PDF");
        assertThat(message.attachments().get(1).content()).isEqualTo(jpeg());
        assertThat(message.problems()).isEmpty();
    }

    @Test
    void opensArchivesWithinArchives() {
        byte[] inner = zip(Map.of("a/photo.jpg", jpeg()));
        assertThat(files(read(mail(part("application/zip", "z.zip", zip(Map.of("inner.zip", inner)))))))
                .containsExactly(
                        "2 application/zip MESSAGE",
                        "2/inner.zip application/zip ZIP",
                        "2/inner.zip/a/photo.jpg image/jpeg ZIP");
    }

    @Test
    void findsPicturesInOfficeDocumentsOldAndNew() {
        assertThat(files(read(mail(part("a/b", "l.docx", SampleMail.docx()), part("a/b", "s.xls", SampleMail.xls())))))
                .contains("2/word/media/image1.jpeg image/jpeg OFFICE", "3/image-0 image/jpeg OFFICE");
    }

    @Test
    void readsAForwardedMessage() {
        String inner = new String(mail(part("image/jpeg", "f.jpg", jpeg())), StandardCharsets.UTF_8)
                .replace("=b\r", "=c\r")
                .replace("--b", "--c");
        MailMessage message = read(mail("--b\r\nContent-Type: message/rfc822\r\n\r\n" + inner));
        assertThat(files(message)).containsExactly("2/2 image/jpeg FORWARDED_MESSAGE");
        assertThat(message.envelope().text()).startsWith("Hello").contains("subject: Test 07:05");
    }

    @ParameterizedTest
    @CsvSource({
        "run.exe, ACTIVE_CONTENT",
        "invoice.js, ACTIVE_CONTENT",
        "letter.docm, ACTIVE_CONTENT",
        "photo.jpg.lnk, ACTIVE_CONTENT"
    })
    void warnsOfWhatCouldRun(String name, Problem.Kind kind) {
        assertThat(read(mail(part("image/jpeg", name, "x".getBytes(StandardCharsets.UTF_8))))
                        .problems())
                .extracting(Problem::kind)
                .as(name)
                .contains(kind);
    }

    @Test
    void tellsAProgramUnderAHarmlessName() {
        byte[] program = new byte[200];
        program[0] = 0x7f;
        program[1] = 'E';
        program[2] = 'L';
        program[3] = 'F';
        assertThat(read(mail(part("image/jpeg", "photo.jpg", program))).problems())
                .extracting(Problem::kind)
                .containsExactly(Problem.Kind.ACTIVE_CONTENT);
    }

    @Test
    void saysWhereAFileIsEncrypted() {
        byte[] zip = zip(Map.of("photo.jpg", jpeg()));
        Function<Integer, byte[]> flagged = offset -> {
            byte[] copy = zip.clone();
            copy[offset] |= 1;
            return copy;
        };
        int central = new String(zip, StandardCharsets.ISO_8859_1).indexOf("PK\u0001\u0002");
        byte[] encrypted = flagged.apply(central + 8);
        encrypted[6] |= 1;
        MailMessage message =
                read(mail(part("a/b", "z.zip", encrypted), part("a/b", "s.pdf", SampleMail.pdf("secret"))));
        assertThat(message.problems())
                .extracting(p -> p.place() + " " + p.kind())
                .containsExactly("2 ENCRYPTED", "3 ENCRYPTED");
    }

    @Test
    void aDamagedContainerKeepsTheRest() {
        byte[] cut = Arrays.copyOf(SampleMail.docx(), 300);
        MailMessage message = read(mail(part("a/b", "l.docx", cut), part("image/jpeg", "p.jpg", jpeg())));
        assertThat(files(message)).contains("3 image/jpeg MESSAGE");
    }

    /** RFC 2231 §3 and §4, RFC 2047 in a quoted string (common practice), and paths that must not leave the name. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            filename*=utf-8''f%C3%B3to.jpg                         | fóto.jpg
            filename*0="my "; filename*1="photo.jpg"               | my photo.jpg
            filename*0*=utf-8''f%C3; filename*1*=%B3to.jpg         | fóto.jpg
            filename="=?utf-8?Q?f=C3=B3to.jpg?="                   | fóto.jpg
            filename=my photo.jpg                                  | my photo.jpg
            filename="C:\\Users\\x\\photo.jpg"                     | photo.jpg
            filename="../../etc/photo.jpg"                         | photo.jpg
            filename="a;b.jpg"; size=3                             | a;b.jpg
            """)
    void readsFileNames(String parameter, String name) {
        byte[] mail = mail(
                "--b\r\nContent-Type: image/jpeg\r\nContent-Disposition: attachment; " + parameter + "\r\n\r\nx\r\n");
        assertThat(read(mail).attachments().get(0).fileName()).as(parameter).contains(name);
    }

    @Test
    void prefersPlainTextButLosesNoHtmlOutsideAlternatives() {
        byte[] mail = ("Content-Type: multipart/mixed; boundary=o\r\n\r\n--o\r\n"
                        + "Content-Type: multipart/alternative; boundary=i\r\n\r\n--i\r\nContent-Type: text/html\r\n\r\n<b>Test</b>\r\n"
                        + "--i\r\nContent-Type: text/plain\r\n\r\nTest 07:05\r\n--i--\r\n--o\r\n"
                        + "Content-Type: text/html; charset=utf-8\r\n\r\n<p>caf\u00e9</p><script>x</script><p>two</p>\r\n--o--\r\n")
                .getBytes(StandardCharsets.UTF_8);
        assertThat(read(mail).envelope().text()).isEqualTo("Test 07:05\ncaf\u00e9\ntwo");
    }
}
