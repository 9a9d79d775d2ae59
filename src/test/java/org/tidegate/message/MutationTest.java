package org.tidegate.message;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.tidegate.examination.Inspector;
import org.tidegate.finding.DeliveryFacts;
import org.tidegate.finding.Findings;
import org.tidegate.rules.Rules;

/**
 * Every message of the sample, damaged in seeded ways: reading ends, throws nothing, stays within its limits, and reads the same
 * damage the same way twice. A share of them is looked into whole, pictures and all. The time limit is a guard against a reading
 * that never ends, no measure of speed.
 */
@Timeout(value = 10, unit = TimeUnit.MINUTES, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class MutationTest {

    private static final double SHARE = Double.parseDouble(System.getProperty("simulation.share", "0.1"));
    private static final int ROUNDS = Math.max(4, (int) (40 * SHARE));
    private static final int INSPECTED_IN = SHARE < 1 ? 60 : 10;
    private static final Limits LIMITS = Limits.standard();
    private static final Inspector INSPECTOR = new Inspector(Rules.bundled());
    private static final DeliveryFacts FACTS =
            new DeliveryFacts(Optional.of(Instant.parse("2026-05-04T06:30:00Z")), new byte[32], List.of());

    /** One way to damage a message. */
    private enum Damage {
        CUT {
            @Override
            byte[] done(byte[] raw, Random random) {
                return Arrays.copyOf(raw, random.nextInt(raw.length));
            }
        },
        FLIPPED_BYTES {
            @Override
            byte[] done(byte[] raw, Random random) {
                byte[] out = raw.clone();
                for (int i = 1 + random.nextInt(40); i > 0; i--) {
                    out[anywhere(raw, random)] ^= (byte) (1 << random.nextInt(8));
                }
                return out;
            }
        },
        LINES_DOUBLED {
            @Override
            byte[] done(byte[] raw, Random random) {
                int from = line(raw, anywhere(raw, random));
                int to = line(raw, Math.min(raw.length, from + random.nextInt(2_000)));
                byte[] part = Arrays.copyOfRange(raw, from, Math.max(from, to));
                return joined(raw, from, from, random.nextInt(20), part);
            }
        },
        LINES_LOST {
            @Override
            byte[] done(byte[] raw, Random random) {
                int from = line(raw, anywhere(raw, random));
                return joined(raw, from, Math.min(raw.length, from + random.nextInt(3_000)), 0, new byte[0]);
            }
        },
        NOISE_INSERTED {
            @Override
            byte[] done(byte[] raw, Random random) {
                byte[] noise = new byte[1 + random.nextInt(5_000)];
                random.nextBytes(noise);
                int at = anywhere(raw, random);
                return joined(raw, at, at, 1, noise);
            }
        },
        LINE_ENDS_CHANGED {
            @Override
            byte[] done(byte[] raw, Random random) {
                byte[] out = raw.clone();
                for (int i = 0; i < out.length; i++) {
                    boolean end = out[i] == '\r' || out[i] == '\n';
                    out[i] = end && random.nextInt(9) == 0 ? (byte) (random.nextBoolean() ? '\r' : '\n') : out[i];
                }
                return out;
            }
        };

        abstract byte[] done(byte[] raw, Random random);

        /** Half of the damage hits the head, where most of the meaning is. */
        static int anywhere(byte[] raw, Random random) {
            return random.nextInt(random.nextBoolean() ? Math.min(raw.length, 4_000) : raw.length);
        }

        static int line(byte[] raw, int at) {
            int start = at;
            while (start > 0 && raw[start - 1] != '\n') {
                start--;
            }
            return start;
        }

        static byte[] joined(byte[] raw, int until, int from, int times, byte[] between) {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            out.write(raw, 0, until);
            for (int i = 0; i < times; i++) {
                out.writeBytes(between);
            }
            out.write(raw, from, raw.length - from);
            return out.toByteArray();
        }
    }

    private static List<Path> sample() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("sample-mailbox"))) {
            return files.filter(f -> f.toString().endsWith(".eml")).sorted().toList();
        }
    }

    @ParameterizedTest
    @MethodSource("sample")
    void isReadWhateverHappenedToIt(Path file) throws IOException {
        byte[] whole = Files.readAllBytes(file);
        Random random = new Random(file.getFileName().toString().hashCode());
        for (int round = 0; round < ROUNDS; round++) {
            Damage damage = Damage.values()[random.nextInt(Damage.values().length)];
            byte[] raw = damage.done(whole, random);
            String which = file + " round " + round + " " + damage;
            read(raw, which);
            if (random.nextInt(INSPECTED_IN) == 0) {
                inspect(raw, which);
            }
        }
    }

    private static void read(byte[] raw, String which) {
        try {
            MailMessage message = MessageReader.read(raw, LIMITS);
            assertThat(message.attachments()).as(which).hasSizeLessThanOrEqualTo(LIMITS.parts());
            assertThat(message.envelope().text()).as(which).hasSizeLessThanOrEqualTo(LIMITS.textChars());
            assertThat(MessageReader.read(raw, LIMITS).envelope()).as(which).isEqualTo(message.envelope());
        } catch (RuntimeException | StackOverflowError e) {
            throw new AssertionError(which, e);
        }
    }

    private static void inspect(byte[] raw, String which) {
        try {
            Findings findings = INSPECTOR.inspect(raw, FACTS);
            assertThat(findings.format()).as(which).isEqualTo(Findings.FORMAT);
        } catch (RuntimeException | StackOverflowError e) {
            throw new AssertionError(which, e);
        }
    }
}
