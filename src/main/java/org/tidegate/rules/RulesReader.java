package org.tidegate.rules;

import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads a rules folder: one file for each component of {@link Rules}, named like it. */
public final class RulesReader {

    private final RuleFiles files;
    private final Faults faults = new Faults();
    private final ContentHash hash = new ContentHash();

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
        List<Object> sections = new ArrayList<>();
        for (RecordComponent c : Rules.class.getRecordComponents()) {
            if (!c.getName().equals("hash")) {
                section(c).ifPresent(sections::add);
            }
        }
        if (!faults.none()) {
            return new RulesResult.Faulty(faults.sorted());
        }
        sections.add(0, hash.hex());
        Rules rules = assemble(sections);
        Consistency.check(rules, faults);
        return faults.none() ? new RulesResult.Loaded(rules) : new RulesResult.Faulty(faults.sorted());
    }

    private Optional<Object> section(RecordComponent c) {
        String name = Names.snake(c.getName()) + ".yaml";
        try {
            Optional<byte[]> bytes = files.read(name);
            if (bytes.isEmpty()) {
                faults.file(name, "the file is missing", "copy it from the rules that came with the program");
                return Optional.empty();
            }
            hash.add(name, bytes.get());
            return new YamlFile(name, faults).read(bytes.get(), c.getGenericType());
        } catch (IOException e) {
            faults.file(name, "the file cannot be read: " + e.getMessage(), "check its permissions");
            return Optional.empty();
        }
    }

    private static Rules assemble(List<Object> sections) {
        try {
            return (Rules) Records.create(Rules.class, sections);
        } catch (InvocationTargetException e) {
            throw new IllegalStateException("Rules refuses its sections", e);
        }
    }
}
