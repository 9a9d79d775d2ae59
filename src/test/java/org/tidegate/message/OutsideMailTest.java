package org.tidegate.message;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.tidegate.Needs;

/** The malformed messages of the mime4j project (Apache-2.0), where they lie beside this project. */
class OutsideMailTest {

    private static final Path MESSAGES =
            Path.of(System.getProperty("tidegate.data", "../shared/data")).resolve("mail/mime4j");

    private static final String WORDS_KEPT =
            "no part begins: the words are kept as text, that parser drops them as a preamble";
    private static final String NO_FINAL_SPACE =
            "RFC 2046 §5.1.1: no boundary ends in a space, so a stripped one still delimits";

    /** Where our reading differs on purpose from that parser's by one leaf more, and why. */
    private static final Map<String, String> OTHERWISE = Map.of(
            "badbound", WORDS_KEPT,
            "missing-boundary", WORDS_KEPT,
            "missing-inner-boundary", WORDS_KEPT,
            "missing-inner-start-boundary", WORDS_KEPT,
            "multipartnopart", WORDS_KEPT,
            "weird-boundary", NO_FINAL_SPACE,
            "very-long-boundary", NO_FINAL_SPACE,
            "very-very-long-boundary", NO_FINAL_SPACE);

    private static List<Path> messages() throws IOException {
        Needs.outside(MESSAGES);
        try (Stream<Path> files = Files.walk(MESSAGES)) {
            return files.filter(f -> f.toString().endsWith(".msg")).sorted().toList();
        }
    }

    @Test
    void noneMakesTheReaderFail() throws IOException {
        List<Path> all = messages();
        assertThat(all).hasSizeGreaterThanOrEqualTo(80);
        for (Path file : all) {
            assertThat(MessageReader.read(Files.readAllBytes(file), Limits.standard()))
                    .as(file.toString())
                    .isNotNull();
        }
    }

    @Test
    void findsTheSameLeaves() throws IOException {
        List<String> different = new ArrayList<>();
        int compared = 0;
        for (Path file : messages()) {
            String name = file.getFileName().toString().replace(".msg", "");
            Path expected = file.resolveSibling(name + "_decoded.xml");
            if (!Files.exists(expected)) {
                continue;
            }
            compared++;
            long theirs = count(Files.readString(expected, StandardCharsets.ISO_8859_1));
            long ours = leaves(
                    new MimeTree(Limits.standard(), new ArrayList<>()).read(Slice.of(Files.readAllBytes(file)), ""));
            if (theirs + (OTHERWISE.containsKey(name) ? 1 : 0) != ours) {
                different.add(name + ": theirs " + theirs + ", ours " + ours);
            }
        }
        assertThat(compared).isGreaterThan(60);
        assertThat(different).isEmpty();
    }

    private static long count(String xml) {
        return Pattern.compile("<(text|binary)-body")
                .matcher(xml)
                .results()
                .map(MatchResult::start)
                .count();
    }

    private static long leaves(Part part) {
        if (part.isMessage()) {
            return leaves(new MimeTree(Limits.standard(), new ArrayList<>())
                    .read(Slice.of(part.decoded(new ArrayList<>())), ""));
        }
        return part.isMultipart()
                ? part.children().stream().mapToLong(OutsideMailTest::leaves).sum()
                : 1;
    }
}
