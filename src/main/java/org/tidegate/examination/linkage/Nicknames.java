package org.tidegate.examination.linkage;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Which given names stand for one another. A table relates a canonical name to its familiar forms; two names are related
 * where one is a familiar form of the other or both are of one canonical name. Lower-case ASCII throughout.
 */
public final class Nicknames {

    private final Map<String, Set<String>> canonical;

    private Nicknames(Map<String, Set<String>> canonical) {
        this.canonical = canonical;
    }

    /** The tables inside the jar: an open English one and our own for other languages. */
    public static Nicknames standard() {
        Map<String, Set<String>> canonical = new HashMap<>();
        for (String table : List.of("nicknames-en.txt", "nicknames-more.txt")) {
            try (InputStream in = Nicknames.class.getResourceAsStream("/linkage/" + table)) {
                if (in == null) {
                    throw new IllegalStateException("The jar lacks linkage/" + table);
                }
                read(new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8)), canonical);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return new Nicknames(canonical);
    }

    /** A table from lines {@code canonical: form form …}; lines that start with # are comments. */
    public static Nicknames of(List<String> lines) {
        Map<String, Set<String>> canonical = new HashMap<>();
        lines.forEach(line -> readLine(line, canonical));
        return new Nicknames(canonical);
    }

    private static void read(BufferedReader lines, Map<String, Set<String>> canonical) throws IOException {
        for (String line = lines.readLine(); line != null; line = lines.readLine()) {
            readLine(line, canonical);
        }
    }

    private static void readLine(String line, Map<String, Set<String>> canonical) {
        int colon = line.indexOf(':');
        if (line.startsWith("#") || colon < 0) {
            return;
        }
        String name = line.substring(0, colon).strip();
        canonical.computeIfAbsent(name, k -> new HashSet<>()).add(name);
        for (String form : line.substring(colon + 1).strip().split("\\s+")) {
            canonical.computeIfAbsent(form, k -> new HashSet<>()).add(name);
        }
    }

    boolean related(NameToken a, NameToken b) {
        return a.spellings().stream().anyMatch(x -> b.spellings().stream().anyMatch(y -> related(x, y)));
    }

    boolean related(String a, String b) {
        Set<String> namesOfA = canonical.getOrDefault(a, Set.of(a));
        Set<String> namesOfB = canonical.getOrDefault(b, Set.of(b));
        return namesOfA.contains(b) || namesOfB.contains(a) || namesOfA.stream().anyMatch(namesOfB::contains);
    }

    /** All canonical names that a form may stand for. */
    Set<String> canonical(String form) {
        return canonical.getOrDefault(form, Set.of());
    }
}
