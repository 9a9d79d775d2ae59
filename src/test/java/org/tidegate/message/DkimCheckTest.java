package org.tidegate.message;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tidegate.Needs;

/** RFC 6376 A.2 and RFC 8463 A.3 with damaged copies, from lieser/dkim_verifier (MIT), where they lie beside this project. */
class DkimCheckTest {

    private static final Path DATA = Path.of(System.getProperty("tidegate.data", "../shared/data"));

    /** The verifying library does not know Ed25519, so the first signature of RFC 8463 A.3 counts as not verified, never as wrong. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            rfc6376-A.2.eml                          | true
            rfc6376-A.2-body_modified.eml            | false
            rfc6376-A.2-header_subject_modified.eml  | false
            rfc6376-A.2-ill_formed-missing_v.eml     | false
            rfc8463-A.3.eml                          | false,true
            rfc8463-A.3-key_algo_mismatch.eml        | false,false
            dkim/added_header-subject.eml            | true
            dkim/unsigned_header-content-type.eml    | true
            """)
    void verifiesAgainstRecordedKeys(String file, String verified) throws IOException {
        Path path = DATA.resolve("mail/dkim-verifier/test/data").resolve(file);
        Needs.outside(path);
        MailMessage message = MessageReader.read(Files.readAllBytes(path), Limits.standard(), keys());
        assertThat(message.envelope().dkim())
                .extracting(s -> String.valueOf(s.verified()))
                .as(file)
                .isEqualTo(List.of(verified.split(",")));
    }

    @ParameterizedTest
    @CsvSource({"dkim/added_header-subject.eml, Is dinner ready?", "dkim/added_header-from.eml, Is dinner ready?"})
    void readsTheSignedFieldWhereAnotherWasAdded(String file, String subject) throws IOException {
        Path path = DATA.resolve("mail/dkim-verifier/test/data").resolve(file);
        Needs.outside(path);
        Envelope envelope = MessageReader.read(Files.readAllBytes(path), Limits.standard(), keys())
                .envelope();
        assertThat(envelope.subject()).as(file).contains(subject);
        assertThat(envelope.from()).as(file).extracting(Mailbox::address).containsExactly("joe@football.example.com");
    }

    private static KeySource keys() throws IOException {
        Map<String, String> records = new HashMap<>();
        for (String line : Files.readAllLines(DATA.resolve("standards/check-values/dkim_dns_records.tsv"))) {
            records.put(line.split("\t", 2)[0], line.split("\t", 2)[1]);
        }
        return (selector, domain) -> Optional.ofNullable(records.get(selector + "._domainkey." + domain));
    }
}
