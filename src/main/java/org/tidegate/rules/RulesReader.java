package org.tidegate.rules;

import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Reads a rules folder: one file for each component of {@link Rules}, named like it, and one for the texts of each language. */
public final class RulesReader {

    static final String TEXTS = "texts/";
    static final String ENDING = ".yaml";

    private final RuleFiles files;
    private final Faults faults = new Faults();
    private final ContentHash hash = new ContentHash();
    private final Set<String> read = new TreeSet<>();

    private RulesReader(RuleFiles files) {
        this.files = files;
    }

    /** Reads a rules folder; all faults at once. */
    public static RulesResult read(Path folder) {
        if (!Files.isDirectory(folder)) {
            return new RulesResult.Faulty(List.of(new RuleFault(
                    folder.toString(), 0, 0, "there is no such folder", "name the folder that holds timing.yaml")));
        }
        return new RulesReader(new FolderFiles(folder)).read();
    }

    /** Reads the copy inside the program. */
    public static RulesResult bundled() {
        return new RulesReader(new BundledFiles()).read();
    }

    private RulesResult read() {
        Map<String, Object> sections = new LinkedHashMap<>();
        for (RecordComponent c : sectionComponents()) {
            file(Names.snake(c.getName()) + ENDING, c.getGenericType()).ifPresent(s -> sections.put(c.getName(), s));
        }
        sections.put("texts", texts(Optional.ofNullable(sections.get("service"))));
        List<String> names = listed();
        names.forEach(this::known);
        if (faults.none()) {
            Rules rules = assemble(sections);
            Consistency.check(rules, faults);
            TextChecks.check(rules, faults);
            if (faults.none()) {
                return new RulesResult.Loaded(rules);
            }
        }
        return new RulesResult.Faulty(faults.sorted());
    }

    /** The components that are one file each. */
    static List<RecordComponent> sectionComponents() {
        List<RecordComponent> sections = new ArrayList<>(List.of(Rules.class.getRecordComponents()));
        sections.removeIf(c -> c.getName().equals("hash") || c.getName().equals("texts"));
        return sections;
    }

    /** Where the service's own file is faulty, the listing tells which languages there are, so that theirs are reported too. */
    private Texts texts(Optional<Object> service) {
        List<String> languages = service.map(s -> ((ServiceRules) s).languages())
                .orElseGet(() -> listed().stream()
                        .filter(n -> n.startsWith(TEXTS) && n.endsWith(ENDING))
                        .map(n -> n.substring(TEXTS.length(), n.length() - ENDING.length()))
                        .toList());
        Map<String, LetterTexts> texts = new LinkedHashMap<>();
        for (String language : languages) {
            file(TEXTS + language + ENDING, LetterTexts.class).ifPresent(t -> texts.put(language, (LetterTexts) t));
        }
        return new Texts(texts);
    }

    private Optional<Object> file(String name, Type type) {
        read.add(name);
        try {
            Optional<byte[]> bytes = files.read(name);
            if (bytes.isEmpty()) {
                faults.file(name, "the file is missing", "copy it from the rules that came with the program");
                return Optional.empty();
            }
            hash.add(name, bytes.get());
            return new YamlFile(name, faults).read(bytes.get(), type);
        } catch (IOException e) {
            faults.file(name, "the file cannot be read: " + e.getMessage(), "check its permissions");
            return Optional.empty();
        }
    }

    private List<String> listed() {
        try {
            return files.names();
        } catch (IOException e) {
            faults.file(".", "the folder cannot be listed: " + e.getMessage(), "check its permissions");
            return List.of();
        }
    }

    private void known(String name) {
        if (name.matches(".*\\.ya?ml") && !read.contains(name)) {
            String hint = name.startsWith(TEXTS)
                    ? "name the language under languages in service.yaml"
                    : "known files: " + String.join(", ", read);
            faults.file(name, "nothing reads this file", hint);
        }
    }

    private Rules assemble(Map<String, Object> sections) {
        List<Object> arguments = new ArrayList<>(List.of(hash.hex()));
        arguments.addAll(sections.values());
        try {
            return (Rules) Records.create(Rules.class, arguments);
        } catch (InvocationTargetException e) {
            throw new IllegalStateException("Rules refuses its sections", e);
        }
    }
}
