package org.tidegate.console;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.tidegate.casework.SubmissionView;
import org.tidegate.examination.picture.Cropping;
import org.tidegate.finding.PictureFinding;
import org.tidegate.finding.PictureFinding.Corner;

/**
 * A picture and what was seen in it. Lines and their strengths are not among it: a reader reads for himself.
 *
 * @param field how a form names where the picture goes when its message is split
 * @param outlines where things were found, in the picture's own pixels
 * @param shown whether a browser can show it
 */
record PhotoView(
        String key,
        String field,
        String source,
        String title,
        int width,
        int height,
        List<Outline> outlines,
        List<String> facts,
        boolean shown) {

    /**
     * What lies where.
     *
     * @param points as SVG writes the corners of a polygon
     * @param x where the label goes
     * @param size height of the label, so that it can be read whatever the picture's size
     */
    record Outline(String kind, String label, String points, long x, long y, long size) {}

    static List<PhotoView> all(SubmissionView v, Words words) {
        List<PhotoView> all = new ArrayList<>();
        for (int m = 0; m < v.messages().size(); m++) {
            for (PictureFinding p : v.messages().get(m).findings().pictures()) {
                if (p.kind() != PictureFinding.Kind.DECORATION) {
                    all.add(of(v, m, p, all.size(), words));
                }
            }
        }
        return all;
    }

    private static PhotoView of(SubmissionView v, int message, PictureFinding p, int place, Words words) {
        String source = "/submissions/" + v.submission().id().value() + "/messages/" + message + "/picture?path="
                + URLEncoder.encode(p.path(), StandardCharsets.UTF_8);
        return new PhotoView(
                "p" + place,
                SplitController.FIELD + message + "/" + p.path(),
                source,
                p.fileName().orElse(p.path()),
                p.width(),
                p.height(),
                outlines(p, words),
                facts(v, message, p, words),
                p.width() > 0 && PictureController.SHOWN.contains(p.mediaType()));
    }

    private static List<Outline> outlines(PictureFinding p, Words words) {
        List<Outline> all = new ArrayList<>();
        p.cassettes().forEach(c -> outline("cassette", c.box(), p, words, all));
        outline("document", p.document().box(), p, words, all);
        outline("portrait", p.document().portrait(), p, words, all);
        outline("zone", p.document().zone(), p, words, all);
        return all;
    }

    private static void outline(String kind, List<Corner> box, PictureFinding p, Words words, List<Outline> all) {
        if (box.isEmpty()) {
            return;
        }
        String points = box.stream()
                .map(c -> String.format(Locale.ROOT, "%.0f,%.0f", c.x(), c.y()))
                .collect(Collectors.joining(" "));
        long size = Math.max(10, p.height() / 28);
        long x =
                Math.max(0, Math.round(box.stream().mapToDouble(Corner::x).min().orElse(0)));
        long y = Math.round(box.stream().mapToDouble(Corner::y).min().orElse(0));
        all.add(new Outline(kind, words.say("photo." + kind), points, x, Math.max(size, y - size / 3), size));
    }

    /** Of which cassettes none is kept by itself, and why where that can be told from the picture. */
    private static List<String> notKept(SubmissionView v, long message, PictureFinding p, Words words) {
        return IntStream.range(0, p.cassettes().size())
                .filter(i -> v.crops().stream()
                        .noneMatch(c -> c.message() == message && c.path().equals(p.path()) && c.cassette() == i))
                .mapToObj(i -> Cropping.against(p, p.cassettes().get(i))
                        .map(why -> words.say("cassette." + why.code()))
                        .orElseGet(() -> words.say("cassette.not-kept")))
                .distinct()
                .toList();
    }

    private static List<String> facts(SubmissionView v, int message, PictureFinding p, Words words) {
        List<String> facts = new ArrayList<>();
        facts.add(p.width() + " × " + p.height() + ", " + p.mediaType());
        facts.add(words.say("photo.cassettes", Integer.toString(p.cassettes().size())));
        facts.add(words.say(p.document().present() ? "photo.with-document" : "photo.no-document"));
        facts.addAll(notKept(v, v.messages().get(message).number(), p, words));
        p.legibility()
                .ifPresent(l -> facts.add(
                        l.readable()
                                ? words.say("photo.legible")
                                : words.say("photo.hard", String.join(", ", l.why()))));
        p.capture()
                .forEach(c -> facts.add(c.place() + ": " + c.wall()
                        + c.offset().map(o -> " " + o).orElse("")));
        facts.addAll(p.editSigns());
        return facts;
    }
}
