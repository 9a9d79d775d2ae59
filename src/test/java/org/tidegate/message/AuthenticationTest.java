package org.tidegate.message;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AuthenticationTest {

    /** RFC 8601 appendix B.2 to B.7; the results written as {@code id method=result domain}. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            example.org 1; none                                                         |
            example.com; spf=pass smtp.mailfrom=example.net                              | example.com spf=pass example.net
            example.com; auth=pass (cram-md5) smtp.auth=sender@example.net; spf=pass smtp.mailfrom=example.net | example.com auth=pass, example.com spf=pass example.net
            example.com; iprev=pass policy.iprev=192.0.2.200                             | example.com iprev=pass
            example.com; dkim=pass (good signature) header.d=example.com                 | example.com dkim=pass example.com
            example.com; dkim=pass reason="good signature" header.i=@mail-router.example.net; dkim=fail reason="bad signature" header.i=@newyork.example.com | example.com dkim=pass mail-router.example.net, example.com dkim=fail newyork.example.com
            foo.example.net (foobar) 1 (baz); dkim (Because I like it) / 1 (One yay) = (wait for it) fail policy (A dot can go here) . (like that) expired (this surprised me) = (as I wasn't expecting it) 1362471462 | foo.example.net dkim=fail
            """)
    void readsTheExamplesOfTheStandard(String value, String wanted) {
        assertThat(written(results("Authentication-Results: " + value)))
                .as(value)
                .isEqualTo(wanted == null ? "" : wanted);
    }

    @Test
    void aFieldWithoutAnIdentityIsVouchedForByNobody() {
        assertThat(results(
                        "Authentication-Results: spf=pass smtp.mailfrom=a.example; dmarc=fail header.from=a.example"))
                .extracting(AuthenticationResult::authservId)
                .containsExactly("", "");
    }

    @Test
    void countsTheHopsAboveAField() {
        assertThat(results("Received: x\r\nAuthentication-Results: mx.example; spf=pass\r\nReceived: y\r\n"
                        + "Authentication-Results: far.example; spf=pass"))
                .extracting(AuthenticationResult::hopsAbove)
                .containsExactly(1, 2);
    }

    @Test
    void readsDkimTags() {
        assertThat(Authentication.signatures(section("DKIM-Signature: v=1; a=rsa-sha256; d=Fern.example; s=may;\r\n"
                        + " t=1777881600; h=From : Subject:date; bh=x; b=y")))
                .singleElement()
                .satisfies(s -> {
                    assertThat(s.domain()).isEqualTo("fern.example");
                    assertThat(s.time().orElseThrow()).hasToString("2026-05-04T08:00:00Z");
                    assertThat(s.signedHeaders()).containsExactly("from", "subject", "date");
                });
    }

    private static List<AuthenticationResult> results(String header) {
        return Authentication.results(section(header));
    }

    private static HeaderSection section(String header) {
        byte[] raw = (header + "\r\n\r\n").getBytes(StandardCharsets.UTF_8);
        return HeaderSection.read(Slice.of(raw), "header", Limits.standard(), new ArrayList<>());
    }

    private static String written(List<AuthenticationResult> results) {
        return results.stream()
                .map(r -> r.authservId() + " " + r.method() + "=" + r.result()
                        + r.domain().map(d -> " " + d).orElse(""))
                .collect(Collectors.joining(", "));
    }
}
