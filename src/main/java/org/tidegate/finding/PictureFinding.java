package org.tidegate.finding;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * What one picture shows by itself.
 *
 * @param path the attachment path
 * @param width after orientation; 0 where it could not be decoded
 * @param height after orientation; 0 where it could not be decoded
 * @param kind whether it could be a photo of the test at all
 * @param readable state of decoding
 * @param make camera make as written
 * @param model camera model as written
 * @param software program that wrote the file
 * @param capture every time the file gives for itself
 * @param legibility measured figures; empty where it could not be decoded
 * @param cassettes found cassettes
 * @param document whether an identity document is in view
 * @param fingerprints for "seen before?"
 * @param editSigns hints that it was edited, in plain English; never proof
 */
public record PictureFinding(
        String path,
        Optional<String> fileName,
        String mediaType,
        int width,
        int height,
        Kind kind,
        Decoding readable,
        Optional<String> make,
        Optional<String> model,
        Optional<String> software,
        List<CaptureClue> capture,
        Optional<Legibility> legibility,
        List<CassetteFinding> cassettes,
        DocumentFinding document,
        Optional<Fingerprints> fingerprints,
        List<String> editSigns) {

    /** The same with fingerprints of what is written on its cassettes. */
    public PictureFinding withWritten(List<String> written) {
        return new PictureFinding(
                path,
                fileName,
                mediaType,
                width,
                height,
                kind,
                readable,
                make,
                model,
                software,
                capture,
                legibility,
                cassettes,
                document,
                fingerprints.map(
                        f -> new Fingerprints(f.exact(), f.whole(), f.centre(), f.turned(), f.cropped(), written)),
                editSigns);
    }

    public enum Kind {
        PHOTO,
        SCREENSHOT,
        /** A page rendered from a document. */
        PAGE,
        /** A logo, signature or tracker: no photo of anything. */
        DECORATION
    }

    public enum Decoding {
        DECODED,
        /** Whatever could be decoded of a truncated or damaged file was. */
        PARTIAL,
        /** The format is known, but no decoder is installed here. */
        UNSUPPORTED,
        /** Damaged beyond reading. */
        BROKEN,
        /** Over a pixel or byte limit; not looked at. */
        OVER_LIMIT
    }

    /**
     * @param sharpness figure of the picture's sharpest regions that matter; compare with the rule's threshold
     * @param brightness mean luma 0–1
     * @param clipped share of pixels burnt out, 0–1
     * @param readable whether a person could read the cassette from it, by the rule's thresholds
     * @param why what is wrong with it: {@code blur}, {@code dark}, {@code bright}, {@code glare}, {@code small}
     */
    public record Legibility(double sharpness, double brightness, double clipped, boolean readable, List<String> why) {}

    /**
     * @param box corners of the cassette in pixels of the picture as it came, upright; clockwise from its top left
     * @param kit the kit whose geometry fits best
     * @param lines by line name: C, T, …
     */
    public record CassetteFinding(List<Corner> box, Optional<String> kit, double confidence, Map<String, Line> lines) {}

    public record Corner(double x, double y) {}

    /**
     * @param strength contrast 0–1 against the membrane beside it
     * @param noise standard deviation of the profile beside the line, same unit
     */
    public record Line(boolean present, double strength, double noise) {}

    /**
     * @param present whether an identity document is in view
     * @param judged false where the picture did not let anyone judge it
     * @param box its corners
     * @param portrait corners of the block that looks like a portrait; empty where only the zone told of a document. Whose it is is never asked
     * @param zone corners of its machine-readable zone; empty where none was read
     * @param mrz lines of a machine-readable zone as read, ICAO 9303
     * @param bearer whom the zone names; empty unless all its check digits hold
     */
    public record DocumentFinding(
            boolean present,
            boolean judged,
            double confidence,
            List<Corner> box,
            List<Corner> portrait,
            List<Corner> zone,
            List<String> mrz,
            Optional<Bearer> bearer) {

        /** Findings of an earlier time know no portrait. */
        public DocumentFinding {
            portrait = Objects.requireNonNullElse(portrait, List.of());
        }

        public static DocumentFinding notJudged() {
            return new DocumentFinding(false, false, 0, List.of(), List.of(), List.of(), List.of(), Optional.empty());
        }
    }

    /**
     * The person that a machine-readable zone names, in the letters of the zone.
     *
     * @param givenNames possibly cut short; empty where there are none
     * @param birth YYMMDD; unknown parts are fillers
     */
    public record Bearer(String surname, String givenNames, String birth) {}

    /**
     * Views are 512 bits under a secret permutation and mask, hex; none for a featureless picture.
     *
     * @param exact HMAC-SHA-256 of the file's bytes, hex
     * @param whole the picture as it stands
     * @param centre the picture without its edges
     * @param turned the quarter turns and mirror images of the whole, to be compared with other pictures' {@code whole}
     * @param cropped where the centre lies if this is a cropped copy, to be compared with other pictures' {@code centre}
     * @param written what is written on each cassette that has writing, 512 bits under secret planes; findings of older versions have none
     */
    public record Fingerprints(
            String exact,
            Optional<String> whole,
            Optional<String> centre,
            List<String> turned,
            List<String> cropped,
            List<String> written) {

        public Fingerprints {
            written = written == null ? List.of() : List.copyOf(written);
        }

        /** Only what later pictures are compared with. */
        public Fingerprints compared() {
            return new Fingerprints(exact, whole, centre, List.of(), List.of(), written);
        }
    }
}
