package org.tidegate.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.tidegate.examination.Assessor;
import org.tidegate.examination.SmallInbox;
import org.tidegate.examination.timing.Enclosure;
import org.tidegate.examination.timing.TimeCase;
import org.tidegate.rules.Rules;

/** Writes the pages that show participants how their times were judged. */
final class EnclosureFiles {

    private EnclosureFiles() {}

    /** Writes {@code folder/NAME.svg} and {@code NAME.pdf} where the message's submission has verdicts on time. */
    static void write(Path folder, Path message, SmallInbox.Taken taken, Rules rules) {
        Optional<TimeCase> timed = new Assessor(rules).timeCase(taken.input(), taken.assessment());
        timed.ifPresent(c -> {
            String language = c.test().appointment().language().orElse("");
            Enclosure page = new Enclosure(c, taken.assessment().time().orElseThrow(), rules, language);
            String name = message.getFileName().toString().replaceFirst("\\.eml$", "");
            try {
                Files.createDirectories(folder);
                Files.writeString(folder.resolve(name + ".svg"), page.svg());
                Files.write(folder.resolve(name + ".pdf"), page.pdf());
            } catch (IOException e) {
                throw new Refusal("the page " + folder.resolve(name) + " cannot be written: " + e.getMessage(), e);
            }
        });
    }
}
