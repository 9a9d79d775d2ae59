package org.tidegate.message;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Forms that mail servers write (RFC 5321 §4.4 and common practice, no source). */
class TraceTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', nullValues = "-", textBlock = """
            from out4.tarnmail.example (out4.tarnmail.example [198.51.100.83]) by mx.skarrasound.example (Sluice) with ESMTPS id v5; Mon, 4 May 2026 08:23:12 +0100 | out4.tarnmail.example | 198.51.100.83 | mx.skarrasound.example | ESMTPS
            from [10.0.0.1] (unknown [198.51.100.7]) by mx.example with ESMTP id 1; Mon, 4 May 2026 08:23:12 +0100 | [10.0.0.1] | 198.51.100.7 | mx.example | ESMTP
            from [198.51.100.153] by web2.tarnmail.example with HTTP; Mon, 4 May 2026 00:23:06 -0700 | [198.51.100.153] | - | web2.tarnmail.example | HTTP
            from [198.51.100.9] (port=4410 helo=[10.0.0.9]) by relay.example with esmtpsa; Mon, 4 May 2026 00:23:06 -0700 | [198.51.100.9] | 198.51.100.9 | relay.example | esmtpsa
            from fern ([198.51.100.9] helo=[10.0.0.9]) by relay.example; Mon, 4 May 2026 00:23:06 -0700 | fern | 198.51.100.9 | relay.example | -
            from unknown (HELO fern.example) (198.51.100.9) by relay.example with SMTP; 4 May 2026 00:23:06 -0000 | unknown | 198.51.100.9 | relay.example | SMTP
            from a.example (IPv6:2001:db8::1) by b.example with LMTP; Mon, 4 May 2026 08:23:12 +0100 | a.example | 2001:db8::1 | b.example | LMTP
            from a.example (a.example [IPv6:2001:DB8::1]) by b.example. with ESMTP; Mon, 4 May 2026 08:23:12 +0100 | a.example | 2001:db8::1 | b.example | ESMTP
            by 2002:a05:6214 with SMTP id x; Mon, 4 May 2026 00:23:06 -0700 (PDT) | - | - | 2002:a05:6214 | SMTP
            (qmail 12345 invoked by uid 89); 4 May 2026 07:23:06 -0000 | - | - | - | -
            """)
    void readsTheWords(String line, String helo, String peer, String by, String with) {
        TraceHop hop = Trace.hop(0, line);
        assertThat(hop.helo().orElse(null)).as(line).isEqualTo(helo);
        assertThat(hop.peer().orElse(null)).as(line).isEqualTo(peer);
        assertThat(hop.by().orElse(null)).as(line).isEqualTo(by);
        assertThat(hop.protocol().orElse(null)).as(line).isEqualTo(with);
        assertThat(hop.time()).as(line).isPresent();
    }
}
