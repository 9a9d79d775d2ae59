package org.tidegate.examination.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tidegate.examination.picture.SceneReader.Scene;
import org.tidegate.finding.CaptureClue;
import org.tidegate.finding.DeliveryFacts;
import org.tidegate.finding.FileProblem;
import org.tidegate.finding.PictureFinding;
import org.tidegate.finding.PictureFinding.Decoding;
import org.tidegate.finding.PictureFinding.Kind;
import org.tidegate.message.Attachment;
import org.tidegate.message.Problem;
import org.tidegate.rules.Protocol;
import org.tidegate.rules.Rules;

/** What the attached files of one message show: one finding a picture, one problem a file that could not be taken at face value. */
public final class PictureExaminer {

    /** More pictures than this are listed, but not decoded. */
    private static final int MOST_DECODED = 40;

    private final PictureDecoder decoder;
    private final FileNameTimes fileNames;
    private final OutsideDecoder outside;
    private final SceneReader scenes;
    private final List<Protocol> kits;

    public PictureExaminer(Rules rules) {
        this(rules, OutsideDecoder.NONE);
    }

    public PictureExaminer(Rules rules, OutsideDecoder outside) {
        this(rules, outside, ZoneReader.NONE);
    }

    /** @param zones reads the machine-readable zones of identity documents */
    public PictureExaminer(Rules rules, OutsideDecoder outside, ZoneReader zones) {
        this(rules, outside, new SceneFinder(rules.protocols(), rules.pictures(), zones));
    }

    PictureExaminer(Rules rules, OutsideDecoder outside, SceneReader scenes) {
        this.decoder = new PictureDecoder(rules.pictures().maxPixels());
        this.fileNames = new FileNameTimes(rules.pictures().fileNameTimes());
        this.outside = outside;
        this.scenes = scenes;
        this.kits = rules.protocols();
    }

    /**
     * @param attachments in the order of the message, files inside files already taken out
     * @param facts the key for fingerprints and the outside decoders that may be used
     */
    public PictureResult examine(List<Attachment> attachments, DeliveryFacts facts) {
        return examine(attachments, List.of(), facts);
    }

    /**
     * @param reading problems that reading the message recorded: those with its files become file problems
     */
    public PictureResult examine(List<Attachment> attachments, List<Problem> reading, DeliveryFacts facts) {
        Fingerprinter fingerprinter = new Fingerprinter(facts.pictureKey());
        List<PictureFinding> pictures = new ArrayList<>();
        Cropping cropping = new Cropping(kits);
        List<FileProblem> problems = new ArrayList<>(FileProblems.ofReading(reading, attachments));
        for (Attachment file : attachments) {
            PictureFormat format = PictureFormat.of(file.content());
            if (format == PictureFormat.OTHER && !file.type().startsWith("image/")) {
                FileProblems.ofOther(file).ifPresent(problems::add);
                continue;
            }
            boolean tooMany = pictures.size() >= MOST_DECODED;
            FileFacts said = FileFactsReader.read(file.content());
            Decoded decoded = tooMany
                    ? Decoded.without(Decoding.OVER_LIMIT, 0, 0)
                    : decode(file.content(), format, said.orientation(), facts);
            PictureFinding finding = finding(file, format, said, decoded, fingerprinter);
            List<float[]> written = decoded.image()
                    .map(image -> cropping.add(pictures.size(), finding, image))
                    .orElse(List.of());
            pictures.add(
                    finding.withWritten(written.stream().map(fingerprinter::of).toList()));
            if (finding.kind() != Kind.DECORATION) {
                FileProblems.ofPicture(file, format, decoded.state()).ifPresent(problems::add);
            }
        }
        return new PictureResult(pictures, problems, cropping.all());
    }

    private Decoded decode(byte[] content, PictureFormat format, int orientation, DeliveryFacts facts) {
        if (format != PictureFormat.HEIC) {
            return decoder.decode(content, format, orientation);
        }
        if (!facts.decoders().contains(OutsideDecoder.HEIF)) {
            return Decoded.without(Decoding.UNSUPPORTED, 0, 0);
        }
        // The converter has already turned the picture upright.
        return outside.toJpeg(content)
                .map(jpeg -> decoder.decode(jpeg, PictureFormat.JPEG, 1))
                .orElseGet(() -> Decoded.without(Decoding.UNSUPPORTED, 0, 0));
    }

    private PictureFinding finding(
            Attachment file, PictureFormat format, FileFacts said, Decoded decoded, Fingerprinter fingerprinter) {
        Kind kind = KindTeller.tell(file, format, said, decoded);
        Scene scene = kind == Kind.DECORATION ? Scene.unseen() : scene(decoded);
        return new PictureFinding(
                file.path(),
                file.fileName(),
                file.type(),
                decoded.width(),
                decoded.height(),
                kind,
                decoded.state(),
                said.make(),
                said.model(),
                said.software(),
                times(said, file.fileName()),
                scene.legibility(),
                scene.cassettes(),
                scene.document(),
                Optional.of(fingerprinter.of(file.content(), decoded.image())),
                EditSigns.of(said));
    }

    private Scene scene(Decoded decoded) {
        return decoded.picture()
                .map(p -> scenes.read(p)
                        .scaled((double) decoded.width() / p.working().getWidth()))
                .orElseGet(Scene::unseen);
    }

    private List<CaptureClue> times(FileFacts said, Optional<String> fileName) {
        List<CaptureClue> times = new ArrayList<>(said.capture());
        fileName.flatMap(fileNames::of).ifPresent(times::add);
        return List.copyOf(times);
    }
}
