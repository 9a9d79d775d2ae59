package org.tidegate.rules;

import java.io.IOException;
import java.util.List;
import java.util.Optional;

/** Where rule files are read from. */
interface RuleFiles {

    /** The file's bytes; empty where there is no such file. */
    Optional<byte[]> read(String name) throws IOException;

    /** All names that can be listed, relative and with forward slashes; empty where a listing is not possible. */
    List<String> names() throws IOException;
}
