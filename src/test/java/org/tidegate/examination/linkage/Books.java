package org.tidegate.examination.linkage;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.Objects;
import org.tidegate.booking.BookReader;
import org.tidegate.booking.BookResult;
import org.tidegate.rules.Rules;
import org.tidegate.rules.RulesReader;
import org.tidegate.rules.RulesResult;

/** Books and the live rules, for tests. */
final class Books {

    private static final Rules RULES = rules();
    private static final Linker LINKER = new Linker(RULES.matching(), ZoneId.of("Europe/London"), Nicknames.standard());

    private Books() {}

    static Linker linker() {
        return LINKER;
    }

    static Rules rules() {
        if (RulesReader.bundled() instanceof RulesResult.Loaded loaded) {
            return loaded.rules();
        }
        throw new IllegalStateException("The bundled rules have faults: " + RulesReader.bundled());
    }

    static TestIndex index(Path csv) {
        if (BookReader.read(csv) instanceof BookResult.Read read) {
            return TestIndex.of(read.book().tests());
        }
        throw new IllegalStateException("Cannot read " + csv);
    }

    static TestIndex indexOfResource(String name) {
        try (InputStream in = Objects.requireNonNull(Books.class.getResourceAsStream(name))) {
            BookResult result = BookReader.read(in.readAllBytes());
            if (result instanceof BookResult.Read read) {
                return TestIndex.of(read.book().tests());
            }
            throw new IllegalStateException(name + " has faults: " + result);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
