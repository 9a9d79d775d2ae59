package org.tidegate.rules;

import java.io.StringReader;
import java.lang.reflect.Type;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.nodes.Node;

/** Reads one YAML file into a bound value; only nodes are composed, so no file can name a Java class. */
final class YamlFile {

    static final int MAX_BYTES = 1 << 20;
    private static final int MAX_DEPTH = 20;

    private final String file;
    private final Faults faults;

    YamlFile(String file, Faults faults) {
        this.file = file;
        this.faults = faults;
    }

    Optional<Object> read(byte[] bytes, Type type) {
        if (bytes.length > MAX_BYTES) {
            faults.file(file, "the file is larger than " + MAX_BYTES + " bytes", "rule files are small");
            return Optional.empty();
        }
        return text(bytes).flatMap(this::compose).flatMap(n -> new Binder(file, faults).bind(type, n, null));
    }

    private Optional<String> text(byte[] bytes) {
        try {
            return Optional.of(StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString());
        } catch (CharacterCodingException e) {
            faults.file(file, "the file is not UTF-8", "save it as UTF-8");
            return Optional.empty();
        }
    }

    private Optional<Node> compose(String text) {
        try {
            Node node = new Yaml(options()).compose(new StringReader(text));
            if (node == null) {
                faults.file(file, "the file is empty", "start from the copy in the jar");
            }
            return Optional.ofNullable(node);
        } catch (MarkedYAMLException e) {
            Mark mark = e.getProblemMark();
            faults.at(file, mark, "this is not YAML: " + e.getProblem(), "check indentation, quotes and colons");
            return Optional.empty();
        } catch (YAMLException e) {
            faults.file(file, "this is not YAML: " + e.getMessage(), "");
            return Optional.empty();
        }
    }

    private static LoaderOptions options() {
        LoaderOptions options = new LoaderOptions();
        options.setCodePointLimit(MAX_BYTES);
        options.setNestingDepthLimit(MAX_DEPTH);
        options.setMaxAliasesForCollections(0);
        return options;
    }
}
