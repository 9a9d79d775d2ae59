package org.tidegate.cli;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import javax.imageio.ImageIO;
import org.jspecify.annotations.Nullable;
import org.tidegate.examination.picture.LineConfidence;
import org.tidegate.examination.picture.PictureExaminer;
import org.tidegate.examination.picture.SceneDrawing;
import org.tidegate.finding.DeliveryFacts;
import org.tidegate.finding.PictureFinding;
import org.tidegate.finding.PictureFinding.CassetteFinding;
import org.tidegate.finding.PictureFinding.Corner;
import org.tidegate.finding.PictureFinding.DocumentFinding;
import org.tidegate.finding.PictureFinding.Legibility;
import org.tidegate.finding.PictureFinding.Line;
import org.tidegate.message.Attachment;
import org.tidegate.rules.Rules;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code read-cassette}: pictures in, what lies in them out. */
@Command(
        name = "read-cassette",
        mixinStandardHelpOptions = true,
        description = {
            "Looks for cassettes and an identity document in pictures; a JSON line each.",
            "Out: {\"file\",\"legible\",\"why\",\"cassettes\":[{\"kit\",\"confidence\",\"box\",\"lines\"}],",
            "\"identity_document\":{\"present\",\"judged\",\"box\",\"portrait\"}}",
            "(shared/schemas/read-cassette.schema.json). strength: the line's contrast, 0 to 1, against the membrane beside it; confidence: how surely it is there.",
            "A line that is not seen here may be there all the same: only a trained, authorised reader decides a result."
        },
        footer = {"", "Example:", "  tidegate read-cassette --picture seen.png photo.jpg"})
final class ReadCassetteCommand implements Callable<Integer> {

    @Mixin
    private RulesOption rulesOption = new RulesOption();

    @Option(names = "--picture", paramLabel = "OUT.png", description = "Draw what was found; for one FILE.")
    private @Nullable Path drawing;

    @Parameters(arity = "1..*", paramLabel = "FILE", description = "JPEG, PNG, WebP, TIFF or GIF.")
    private List<Path> files = List.of();

    @Spec
    private CommandSpec spec = CommandSpec.create();

    /**
     * The shape of {@code shared/schemas/read-cassette.schema.json}.
     *
     * @param why what keeps a person from reading it; empty where nothing does
     */
    record Answer(String file, boolean legible, List<String> why, List<Cassette> cassettes, Document identityDocument) {

        static Answer of(Path file, PictureFinding seen) {
            return new Answer(
                    file.toString(),
                    seen.legibility().map(Legibility::readable).orElse(false),
                    seen.legibility().map(Legibility::why).orElse(List.of()),
                    seen.cassettes().stream().map(Cassette::of).toList(),
                    Document.of(seen.document()));
        }
    }

    /** @param box x and y of its corners, pixels of the upright picture; the sample end is the side from the last to the first */
    record Cassette(Optional<String> kit, double confidence, List<List<Double>> box, Map<String, Seen> lines) {

        static Cassette of(CassetteFinding found) {
            Map<String, Seen> lines = new TreeMap<>();
            found.lines().forEach((name, line) -> lines.put(name, Seen.of(line)));
            return new Cassette(found.kit(), thousandths(found.confidence()), pixels(found.box()), lines);
        }
    }

    record Seen(boolean present, double strength, double noise, double confidence) {

        static Seen of(Line line) {
            return new Seen(
                    line.present(),
                    thousandths(line.strength()),
                    thousandths(line.noise()),
                    thousandths(LineConfidence.of(line)));
        }
    }

    /** @param box empty where none is present */
    record Document(boolean present, boolean judged, List<List<Double>> box, List<List<Double>> portrait) {

        static Document of(DocumentFinding seen) {
            return new Document(seen.present(), seen.judged(), pixels(seen.box()), pixels(seen.portrait()));
        }
    }

    @Override
    public Integer call() {
        if (drawing != null && files.size() > 1) {
            throw new Refusal("--picture draws one picture; name one FILE.");
        }
        Rules rules = rulesOption.load();
        PictureExaminer examiner = new PictureExaminer(rules);
        int code = 0;
        for (Path file : files) {
            byte[] content = MessageFiles.read(file, rules.limits());
            PictureFinding seen = examine(examiner, file, content);
            if (seen.legibility().isEmpty()) {
                spec.commandLine().getErr().println("tidegate: " + file + " is no picture that can be decoded here.");
                code = 2;
                continue;
            }
            spec.commandLine().getOut().println(Json.text(Answer.of(file, seen)));
            draw(content, seen, rules);
        }
        return code;
    }

    /** As a picture that came by itself, whatever its bytes turn out to be. */
    private static PictureFinding examine(PictureExaminer examiner, Path file, byte[] content) {
        Attachment attachment = new Attachment(
                "1",
                Optional.of(String.valueOf(file.getFileName())),
                "image/*",
                "image/*",
                Attachment.Container.MESSAGE,
                false,
                content);
        DeliveryFacts facts = new DeliveryFacts(Optional.empty(), new byte[16], List.of());
        return examiner.examine(List.of(attachment), facts).pictures().get(0);
    }

    private void draw(byte[] content, PictureFinding seen, Rules rules) {
        Path to = drawing;
        if (to != null) {
            SceneDrawing.of(content, seen, rules.pictures()).ifPresent(image -> write(image, to));
        }
    }

    private static void write(BufferedImage image, Path to) {
        try {
            ImageIO.write(image, "png", to.toFile());
        } catch (IOException e) {
            throw new Refusal(to + " cannot be written: " + e.getMessage(), e);
        }
    }

    private static List<List<Double>> pixels(List<Corner> box) {
        return box.stream()
                .map(c -> List.of(Math.round(10 * c.x()) / 10.0, Math.round(10 * c.y()) / 10.0))
                .toList();
    }

    private static double thousandths(double value) {
        return Math.round(value * 1000) / 1000.0;
    }
}
