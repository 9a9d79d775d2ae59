package org.tidegate.cli;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import javax.imageio.ImageIO;
import org.jspecify.annotations.Nullable;
import org.tidegate.examination.picture.FinePicture;
import org.tidegate.examination.picture.PictureFile;
import org.tidegate.examination.picture.mrz.MrzReader;
import org.tidegate.examination.picture.mrz.ZoneDrawing;
import org.tidegate.examination.picture.mrz.ZoneReading;
import org.tidegate.rules.Rules;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code read-mrz}: pictures in, the text of their machine-readable zones out. */
@Command(
        name = "read-mrz",
        mixinStandardHelpOptions = true,
        description = {
            "Reads the machine-readable zones of identity documents (ICAO Doc 9303) from pictures, a JSON line each.",
            "Out: {\"file\",\"found\",\"format\",\"lines\",\"valid\",\"undecided\"}; valid: every check digit holds;",
            "undecided: characters, counted from 1, that could be another one as well. Names bear no check digit.",
            "A zone tells what a document says, never whose face is on it; a trained person decides."
        },
        footer = {"", "Example:", "  tidegate read-mrz --picture seen.png card.jpg"})
final class ReadMrzCommand implements Callable<Integer> {

    @Mixin
    private RulesOption rulesOption = new RulesOption();

    @Option(names = "--picture", paramLabel = "OUT.png", description = "Draw what was read; for one FILE.")
    private @Nullable Path drawing;

    @Parameters(arity = "1..*", paramLabel = "FILE", description = "JPEG, PNG, WebP, TIFF or GIF.")
    private List<Path> files = List.of();

    @Spec
    private CommandSpec spec = CommandSpec.create();

    /** The shape of {@code shared/schemas/read-mrz.schema.json}. */
    record Answer(
            String file,
            boolean found,
            Optional<String> format,
            Optional<List<String>> lines,
            boolean valid,
            Optional<List<Place>> undecided) {

        static Answer of(Path file, Optional<ZoneReading> zone) {
            return new Answer(
                    file.toString(),
                    zone.isPresent(),
                    zone.map(z -> z.text().format().name().replace('_', '-')),
                    zone.map(z -> z.text().lines()),
                    zone.isPresent() && zone.get().valid(),
                    zone.map(z -> z.undecided().stream()
                            .map(u -> new Place(u.line() + 1, u.place() + 1))
                            .toList()));
        }
    }

    /** Both counted from 1. */
    record Place(int line, int character) {}

    @Override
    public Integer call() {
        if (drawing != null && files.size() > 1) {
            throw new Refusal("--picture draws one picture; name one FILE.");
        }
        Rules rules = rulesOption.load();
        MrzReader reader = new MrzReader();
        int code = 0;
        for (Path file : files) {
            Optional<FinePicture> picture = PictureFile.open(MessageFiles.read(file, rules.limits()), rules.pictures());
            if (picture.isEmpty()) {
                spec.commandLine().getErr().println("tidegate: " + file + " is no picture that can be decoded here.");
                code = 2;
                continue;
            }
            answer(file, picture.get(), reader.find(picture.get()));
        }
        return code;
    }

    private void answer(Path file, FinePicture picture, Optional<ZoneReading> zone) {
        spec.commandLine().getOut().println(Json.text(Answer.of(file, zone)));
        spec.commandLine().getOut().flush();
        if (drawing != null) {
            write(zone.map(z -> ZoneDrawing.of(picture.working(), z)).orElse(picture.working()), drawing);
        }
    }

    private static void write(BufferedImage image, Path to) {
        try {
            ImageIO.write(image, "png", to.toFile());
        } catch (IOException e) {
            throw new Refusal(to + " cannot be written: " + e.getMessage(), e);
        }
    }
}
