package org.tidegate.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** A copy of the live rules to damage. */
public record RulesFolder(Path path) {

    public static RulesFolder copyTo(Path target) throws IOException {
        Path live = Path.of("rules");
        try (Stream<Path> all = Files.walk(live)) {
            for (Path p : all.toList()) {
                Path copy = target.resolve(live.relativize(p).toString());
                if (Files.isDirectory(p)) {
                    Files.createDirectories(copy);
                } else {
                    Files.copy(p, copy);
                }
            }
        }
        return new RulesFolder(target);
    }

    /** Replaces the first occurrence of {@code from}, which must be there. */
    public RulesFolder edit(String file, String from, String to) {
        try {
            String text = Files.readString(path.resolve(file));
            assertThat(text).as(file).contains(from);
            int at = text.indexOf(from);
            Files.writeString(path.resolve(file), text.substring(0, at) + to + text.substring(at + from.length()));
            return this;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Nobody is told when a shift begins, so that what goes out does not depend on the time of day at which a test runs. */
    public RulesFolder withoutHandover() {
        return edit("hours.yaml", "handover_to: shift@skarrasound.example\n", "");
    }

    /** The line on which {@code text} stands first, from 1. */
    int lineOf(String file, String text) throws IOException {
        List<String> lines = Files.readAllLines(path.resolve(file));
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).contains(text)) {
                return i + 1;
            }
        }
        throw new IllegalArgumentException(text + " is not in " + file);
    }

    /** The sample's morning is night: people are there from 13:00 to 21:00. */
    public static Rules night(Path target) throws IOException {
        return copyTo(target)
                .edit("hours.yaml", "from: \"07:00\"", "from: \"13:00\"")
                .edit("hours.yaml", "until: \"19:00\"", "until: \"21:00\"")
                .rules();
    }

    public Rules rules() {
        return ((RulesResult.Loaded) Rules.load(path)).rules();
    }

    List<RuleFault> faults() {
        return Rules.load(path) instanceof RulesResult.Faulty f ? f.faults() : List.of();
    }
}
