package org.tidegate.examination.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.tidegate.finding.CaptureClue;
import org.tidegate.finding.Findings;
import org.tidegate.finding.PictureFinding;

/** What the submission's photos show. */
final class PictureFacts {

    private PictureFacts() {}

    private static final String THE_PHOTO = "The photo";
    private static final String THE_CASSETTE = "A cassette that looks the same, by what is written on it,";

    private record Located(int message, int index, PictureFinding picture) {

        /** As {@link Standing} names it. */
        String key() {
            return Standing.pictureKey(message, picture.path());
        }
    }

    static void add(CheckInput in, FactSheet sheet) {
        List<Located> decoded = located(in, true);
        List<Located> cassette = located(in, false);
        boolean shown = cassette.stream().anyMatch(l -> !l.picture().cassettes().isEmpty());
        sheet.fact(
                "has_photo",
                in.messages().stream().anyMatch(m -> !Photos.of(m).all().isEmpty()));
        sheet.fact("brings_new_photo", !Photos.of(in.last()).all().isEmpty());
        sheet.fact("photos_judged", !decoded.isEmpty());
        sheet.fact("cassette_found", shown);
        sheet.fact(
                "cassettes",
                decoded.stream()
                        .mapToInt(l -> l.picture().cassettes().size())
                        .max()
                        .orElse(0));
        legibility(decoded, cassette, shown, sheet);
        identity(decoded, sheet);
        DocumentFacts.add(in, sheet);
        sheet.fact("capture_time", cassette.stream().anyMatch(l -> hasCaptureTime(l.picture())));
        boolean reused = decoded.stream().anyMatch(l -> in.standing().reused().contains(l.key()));
        sheet.fact("reused", reused);
        sheet.fact(
                "cassette_alike",
                decoded.stream().anyMatch(l -> in.standing().alike().contains(l.key())));
        sheet.figure("reuse", reused ? THE_PHOTO : THE_CASSETTE);
        List<String> signs = decoded.stream()
                .flatMap(l -> l.picture().editSigns().stream())
                .distinct()
                .toList();
        sheet.fact("edited", !signs.isEmpty());
        sheet.figure("edit_signs", String.join("; ", signs));
        sheet.fact("hold_without_capture_time", in.rules().pictures().holdWithoutCaptureTime());
    }

    private static List<Located> located(CheckInput in, boolean allDecoded) {
        List<Located> found = new ArrayList<>();
        for (int m = 0; m < in.messages().size(); m++) {
            Findings message = in.messages().get(m);
            Photos photos = Photos.of(message);
            for (int i : allDecoded ? photos.decoded() : photos.cassette()) {
                found.add(new Located(m, i, message.pictures().get(i)));
            }
        }
        return found;
    }

    private static void legibility(List<Located> decoded, List<Located> cassette, boolean shown, FactSheet sheet) {
        List<Located> candidates = shown
                ? cassette.stream()
                        .filter(l -> !l.picture().cassettes().isEmpty())
                        .toList()
                : decoded;
        boolean judged =
                candidates.stream().anyMatch(l -> l.picture().legibility().isPresent());
        boolean readable = candidates.stream().anyMatch(l -> Photos.legible(l.picture()));
        TreeSet<String> why = new TreeSet<>();
        candidates.forEach(l -> l.picture().legibility().ifPresent(x -> why.addAll(x.why())));
        sheet.fact("photo_readable", readable || !judged);
        sheet.figure("unreadable_why", why.isEmpty() ? "unclear" : String.join(", ", why));
    }

    private static void identity(List<Located> decoded, FactSheet sheet) {
        boolean found = decoded.stream().anyMatch(l -> l.picture().document().present());
        sheet.fact("id_found", found);
        sheet.fact(
                "id_judged",
                found || decoded.stream().anyMatch(l -> l.picture().document().judged()));
        sheet.fact(
                "id_in_same_picture",
                decoded.stream()
                        .anyMatch(l -> l.picture().document().present()
                                && !l.picture().cassettes().isEmpty()));
    }

    private static boolean hasCaptureTime(PictureFinding p) {
        return p.capture().stream().anyMatch(c -> c.kind() != CaptureClue.Kind.EXIF_MODIFIED);
    }
}
