package org.tidegate.rules;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Rule files in a folder. */
record FolderFiles(Path folder) implements RuleFiles {

    private static final int DEPTH = 2;
    private static final int MOST_FILES = 1_000;

    @Override
    public Optional<byte[]> read(String name) throws IOException {
        Path file = folder.resolve(name);
        if (!Files.isRegularFile(file)) {
            return Optional.empty();
        }
        try (var in = Files.newInputStream(file)) {
            return Optional.of(in.readNBytes(YamlFile.MAX_BYTES + 1));
        }
    }

    @Override
    public List<String> names() throws IOException {
        try (Stream<Path> all = Files.walk(folder, DEPTH)) {
            return all.filter(Files::isRegularFile)
                    .map(p -> folder.relativize(p).toString().replace('\\', '/'))
                    .limit(MOST_FILES)
                    .sorted()
                    .toList();
        }
    }
}
