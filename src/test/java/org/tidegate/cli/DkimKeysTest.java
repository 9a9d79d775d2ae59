package org.tidegate.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tidegate.message.RecordedKey;

/** Files of recorded DKIM keys. */
class DkimKeysTest {

    @TempDir
    Path folder;

    @Test
    void areReadLineByLine() throws IOException {
        Path file = Files.writeString(
                folder.resolve("keys"), "# recorded 4 May 2026\n\ns1._domainkey.tarnpost.example\tv=DKIM1; p=AAAA\n");
        assertThat(DkimKeys.read(file)).containsExactly(new RecordedKey("s1", "tarnpost.example", "v=DKIM1; p=AAAA"));
    }

    @Test
    void aLineThatIsNoKeyIsNamed() throws IOException {
        Path file = Files.writeString(folder.resolve("keys"), "\ntarnpost.example v=DKIM1\n");
        assertThatThrownBy(() -> DkimKeys.read(file))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("line 2");
    }
}
