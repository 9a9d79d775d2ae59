package org.tidegate.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code tune} on a small store: a candidate that is a valid rule file, and live rules that stay as they are. */
class TuneTest {

    private static final Path SAMPLE = Path.of("sample-mailbox");

    @TempDir
    Path folder;

    @Test
    void writesACandidateAndLeavesTheRulesAlone() throws IOException {
        Path data = folder.resolve("data");
        Path rules = copyOfRules();
        String before = Files.readString(rules.resolve("matching.yaml"));
        assertThat(Ran.command("appointments", "import", SAMPLE.resolve("appointments.csv"), "--data", data)
                        .code())
                .isZero();
        assertThat(Ran.command("take", "--data", data, SAMPLE.resolve("01-perfect.eml"))
                        .code())
                .isZero();
        Path candidate = folder.resolve("candidate.yaml");
        Ran ran = Ran.command("tune", "--data", data, "--rules", rules, "--out", candidate);
        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(ran.out()).contains("the live rules are unchanged");
        assertThat(Files.readString(rules.resolve("matching.yaml"))).isEqualTo(before);
        Files.copy(candidate, rules.resolve("matching.yaml"), java.nio.file.StandardCopyOption.REPLACE_EXISTING);
        Ran check = Ran.command("check-rules", rules);
        assertThat(check.code()).as(check.out() + check.err()).isZero();
    }

    @Test
    void saysWhenThereIsNothingToLearnFrom() {
        Ran ran = Ran.command("tune", "--data", folder.resolve("empty"), "--out", folder.resolve("candidate.yaml"));
        assertThat(ran.code()).isNotZero();
        assertThat(ran.err()).contains("no stored message");
    }

    private Path copyOfRules() throws IOException {
        Path copy = folder.resolve("rules");
        List<Path> files;
        try (Stream<Path> all = Files.walk(Path.of("rules"))) {
            files = all.filter(Files::isRegularFile).toList();
        }
        for (Path file : files) {
            Path to = copy.resolve(Path.of("rules").relativize(file));
            Files.createDirectories(to.getParent());
            Files.copy(file, to);
        }
        return copy;
    }
}
