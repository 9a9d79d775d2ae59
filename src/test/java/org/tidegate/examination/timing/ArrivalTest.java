package org.tidegate.examination.timing;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tidegate.message.Envelope;

/** Where a message crossed into our own mail (DESIGN 6; RFC 5321 §4.4). */
class ArrivalTest {

    @Test
    void isTheFirstOwnLineWithAPeerOutside() {
        Envelope envelope = envelope(Scene.timer("07:00:00+01:00")
                .received("mx.skarrasound.example", "127.0.0.1", "07:30:20+01:00")
                .received("MX.Skarrasound.example.", "10.0.0.7", "07:30:15+01:00")
                .received("mx.skarrasound.example", "198.51.100.1", "07:30:10+01:00")
                .received("mx.skarrasound.example", "192.0.2.9", "06:00:00+01:00"));
        Arrival arrival = Arrival.of(envelope, Optional.empty(), Scene.RULES.timing());
        assertThat(arrival.time()).contains(Instant.parse("2026-05-04T06:30:10Z"));
        assertThat(arrival.foreign()).hasSize(1);
    }

    @Test
    void isTheGivenDeliveryWhereNoLineTells() {
        Envelope envelope =
                envelope(Scene.timer("07:00:00+01:00").received("out.example.net", "198.51.100.1", "07:30:10+01:00"));
        Instant delivered = Instant.parse("2026-05-04T06:31:00Z");
        assertThat(Arrival.of(envelope, Optional.of(delivered), Scene.RULES.timing())
                        .time())
                .contains(delivered);
        assertThat(Arrival.of(envelope, Optional.empty(), Scene.RULES.timing()).time())
                .isEmpty();
    }

    /** A line without a zone gives no time: up to fourteen hours would be guessed (RFC 5322 §3.3 demands one). */
    @Test
    void isNotGuessedFromALineWithoutAZone() {
        Envelope envelope =
                envelope(Scene.timer("07:00:00+01:00").receivedWithoutZone("mx.skarrasound.example", "07:30:10"));
        Instant delivered = Instant.parse("2026-05-04T06:31:00Z");
        assertThat(Arrival.of(envelope, Optional.empty(), Scene.RULES.timing()).time())
                .isEmpty();
        assertThat(Arrival.of(envelope, Optional.of(delivered), Scene.RULES.timing())
                        .time())
                .contains(delivered);
    }

    /** Private ranges of RFC 1918 and RFC 4193, and addresses just outside them. */
    @ParameterizedTest
    @CsvSource({
        "10.0.0.0/8, 10.255.255.255, true",
        "10.0.0.0/8, 11.0.0.0, false",
        "172.16.0.0/12, 172.31.255.255, true",
        "172.16.0.0/12, 172.32.0.0, false",
        "192.168.0.0/16, 192.169.0.1, false",
        "fc00::/7, fd12::1, true",
        "fc00::/7, fe80::1, false",
        "fc00::/7, IPv6:fd12::1, true",
        "127.0.0.0/8, localhost, false",
        "127.0.0.0/8, 127.0.0.999, false",
        "0.0.0.0/0, 203.0.113.9, true"
    })
    void networksHoldTheirAddresses(String network, String address, boolean holds) {
        assertThat(Cidr.parse(network).orElseThrow().contains(address)).isEqualTo(holds);
    }

    @ParameterizedTest
    @CsvSource({"10.0.0.0/33", "fc00::/129", "ten/8", "10.0.0.0/x", "example.org"})
    void whatIsNoNetworkIsNone(String text) {
        assertThat(Cidr.parse(text)).isEmpty();
    }

    private static Envelope envelope(Scene scene) {
        return scene.build().messages().get(0).findings().envelope();
    }
}
