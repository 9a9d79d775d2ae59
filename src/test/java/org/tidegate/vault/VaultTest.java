package org.tidegate.vault;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.Arrays;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class VaultTest {

    private static final Path FOLDER = Path.of("/vault");

    private final MessageKey key = MessageKey.random(new SecureRandom());

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 4095, 4096, 100_000, (1 << 20) + 1, 5_000_000})
    void sealedBytesComeBack(int length) throws IOException {
        byte[] plain = bytes(length);
        byte[] sealed = seal(plain);
        assertThat(Sealing.open(key, new ByteArrayInputStream(sealed))).isEqualTo(plain);
        assertThat(indexOf(sealed, plain)).as("the plain bytes lie open").isNegative();
    }

    @Test
    void changedCutOrExchangedBlobsAreRefused() throws IOException {
        byte[] sealed = seal(bytes(10_000));
        byte[] changed = sealed.clone();
        changed[5000] ^= 1;
        MessageKey renamed = new MessageKey(key.key(), key.salt(), "another");
        assertThatThrownBy(() -> open(key, changed)).isInstanceOf(IOException.class);
        assertThatThrownBy(() -> open(key, Arrays.copyOf(sealed, 4200))).isInstanceOf(IOException.class);
        assertThatThrownBy(() -> open(renamed, sealed)).isInstanceOf(IOException.class);
        assertThatThrownBy(() -> open(MessageKey.random(new SecureRandom()), sealed))
                .isInstanceOf(IOException.class);
    }

    @Test
    void theMasterKeyIsMadeOnceAndBindsThePurpose(@TempDir Path folder) throws IOException {
        DurableFiles files = new DurableFiles(new DiskLayer(), folder.resolve("keys"));
        byte[] wrapped = MasterKey.in(files, new SecureRandom()).wrap(key.key(), "message 1");
        MasterKey again = MasterKey.in(files, new SecureRandom());
        assertThat(again.unwrap(wrapped, "message 1")).isEqualTo(key.key());
        assertThatThrownBy(() -> again.unwrap(wrapped, "message 2"))
                .isInstanceOf(IOException.class)
                .hasMessageContaining("message 2");
    }

    /** Wherever the machine stops, a file that was reported written is there, whole; one that was not is whole or absent. */
    @Test
    void whatWasReportedWrittenSurvivesAnyCrash() throws IOException {
        byte[] plain = bytes(3000);
        for (int stop = 0; stop < 12; stop++) {
            LossyLayer layer = new LossyLayer();
            DurableFiles files = new DurableFiles(layer, FOLDER);
            layer.stopAfter(stop);
            boolean reported = written(files, plain);
            layer.crash();
            boolean there = files.exists("blob");
            assertThat(there || !reported).as("stopped after %d steps", stop).isTrue();
            if (there) {
                try (InputStream in = files.open("blob")) {
                    assertThat(in.readAllBytes())
                            .as("stopped after %d steps", stop)
                            .isEqualTo(plain);
                }
            }
        }
    }

    @Test
    void aFullDiskIsReportedAndLeavesNothingBehind() throws IOException {
        LossyLayer layer = new LossyLayer();
        DurableFiles files = new DurableFiles(layer, FOLDER);
        layer.limit(100);
        assertThatThrownBy(() -> files.write("blob", out -> out.write(bytes(3000))))
                .isInstanceOf(IOException.class)
                .hasMessageContaining("No space left");
        assertThat(layer.exists(FOLDER.resolve("blob.part"))).isFalse();
        assertThat(files.exists("blob")).isFalse();
    }

    @Test
    void severalFilesAreKeptTogetherOrNotAtAll() throws IOException {
        LossyLayer layer = new LossyLayer();
        DurableFiles files = new DurableFiles(layer, FOLDER);
        files.writeAll(Map.of("a", out -> out.write(bytes(300)), "b", out -> out.write(bytes(300))));
        assertThat(files.exists("a") && files.exists("b")).isTrue();
        layer.limit(1000);
        assertThatThrownBy(() ->
                        files.writeAll(Map.of("c", out -> out.write(bytes(300)), "d", out -> out.write(bytes(3000)))))
                .isInstanceOf(IOException.class);
        assertThat(files.exists("c") || files.exists("d")).isFalse();
        assertThat(layer.exists(FOLDER.resolve("c.part")) || layer.exists(FOLDER.resolve("d.part")))
                .isFalse();
    }

    private static boolean written(DurableFiles files, byte[] plain) {
        try {
            files.write("blob", out -> out.write(plain));
            return true;
        } catch (IOException e) {
            return false;
        }
    }

    private byte[] seal(byte[] plain) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Sealing.seal(key, plain, out);
        return out.toByteArray();
    }

    private static byte[] open(MessageKey key, byte[] sealed) throws IOException {
        return Sealing.open(key, new ByteArrayInputStream(sealed));
    }

    private static byte[] bytes(int length) {
        byte[] bytes = new byte[length];
        new Random(20260504).nextBytes(bytes);
        return bytes;
    }

    private static int indexOf(byte[] all, byte[] part) {
        return part.length < 16
                ? -1
                : new String(all, StandardCharsets.ISO_8859_1).indexOf(new String(part, StandardCharsets.ISO_8859_1));
    }
}
