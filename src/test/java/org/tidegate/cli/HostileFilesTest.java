package org.tidegate.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tidegate.Needs;
import org.tidegate.cli.HostileFiles.Hostile;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Under a heap of 256 MB a process of its own examines files that ask for gigabytes, and names what is wrong with each. */
class HostileFilesTest {

    private static final JsonMapper JSON = new JsonMapper();
    private static final String HEADER =
            "ref,given_name,family_name,date_of_birth,email,clinic,slot_start,slot_end,kit,lot\n";

    private static final Set<String> PHOTO_HOLDS = Set.of(
            "hold:no-photo",
            "hold:no-cassette",
            "hold:photo-unreadable",
            "hold:format-unsupported",
            "hold:attachment-unsafe");

    @TempDir
    Path folder;

    @Test
    void areNamedInBoundedMemory() throws Exception {
        List<Hostile> all = HostileFiles.all();
        Map<String, List<String>> codes = examined(all);
        for (Hostile hostile : all) {
            assertThat(codes.get(hostile.name() + ".eml")).as(hostile.name()).contains("hold:" + hostile.code());
        }
    }

    /** Pictures that made other readers fail, of three libraries' own tests; none shows a cassette. */
    @Test
    void outsidePicturesAreNamedInBoundedMemory() throws Exception {
        Path pictures = Path.of(System.getProperty("tidegate.data", "../shared/data"), "pictures");
        Needs.outside(pictures);
        List<Hostile> all = new ArrayList<>();
        try (Stream<Path> files = Files.walk(pictures)) {
            for (Path file : files.filter(f -> f.toString().contains("/images/"))
                    .filter(Files::isRegularFile)
                    .sorted()
                    .toList()) {
                all.add(new Hostile(
                        "outside" + letters(all.size()), "", "image/x-unknown", Files.readAllBytes(file), 1));
            }
        }
        Map<String, List<String>> codes = examined(all);
        assertThat(codes).hasSameSizeAs(all);
        assertThat(codes.values()).allMatch(c -> c.stream().anyMatch(PHOTO_HOLDS::contains));
    }

    private static String letters(int number) {
        return "" + (char) ('a' + number / 26) + (char) ('a' + number % 26);
    }

    private Map<String, List<String>> examined(List<Hostile> all) throws Exception {
        StringBuilder book = new StringBuilder(HEADER);
        List<Path> mails = new ArrayList<>();
        for (Hostile hostile : all) {
            String family = "Q" + hostile.name().replaceAll("[^a-z]", "") + "son";
            book.append(String.format(
                    "SS-%04d,Robin,%s,1990-01-01,crew@tarnpost.example,QUAY,2026-05-04T07:00:00+01:00,"
                            + "2026-05-04T07:15:00+01:00,SKERRY-20,SK2605A%n",
                    mails.size(), family));
            mails.add(Files.write(
                    folder.resolve(hostile.name() + ".eml"), hostile.mail("Robin " + family + " 07:02 QUAY")));
        }
        Path bookFile = Files.writeString(folder.resolve("book.csv"), book);
        List<Object> words = new ArrayList<>(List.of("examine", "--appointments", bookFile));
        words.addAll(mails);
        Path log = folder.resolve("examine.log");
        WatchChild child = WatchChild.start(log, "256m", Main.class, words.toArray());
        String lines = child.rest();
        assertThat(child.code()).as(Files.readString(log)).isZero();
        return codes(lines);
    }

    private static Map<String, List<String>> codes(String lines) throws IOException {
        Map<String, List<String>> codes = new TreeMap<>();
        for (String line : lines.lines().toList()) {
            JsonNode json = JSON.readTree(line.getBytes(StandardCharsets.UTF_8));
            List<String> of = new ArrayList<>();
            json.get("discrepancies")
                    .forEach(d -> of.add(
                            d.get("severity").asString() + ":" + d.get("code").asString()));
            codes.put(Path.of(json.get("file").asString()).getFileName().toString(), of);
        }
        return codes;
    }
}
