package org.tidegate.console;

import java.util.ArrayList;
import java.util.List;
import org.tidegate.casework.KeptCrop;
import org.tidegate.casework.SubmissionView;

/**
 * A cassette by itself. Where the kit's lines have their places is told beside it, never over it, and never whether one is there.
 *
 * @param band height of the band above the crop in which the places are named, in the crop's pixels
 * @param about what the places mean; empty where none is known
 */
record CropView(
        String key, String source, String title, int width, int height, int band, List<Place> places, String about) {

    /** @param x in the crop's pixels */
    record Place(String line, long x) {}

    static List<CropView> all(SubmissionView v, Words words) {
        List<CropView> all = new ArrayList<>();
        for (KeptCrop c : v.crops()) {
            all.add(of(v, c, all.size() + 1, words));
        }
        return all;
    }

    private static CropView of(SubmissionView v, KeptCrop c, int number, Words words) {
        int width = c.shape().width();
        return new CropView(
                "c" + c.number(),
                "/submissions/" + v.submission().id().value() + "/cassettes/" + c.number(),
                words.say("cassette.title", number),
                width,
                c.shape().height(),
                Math.max(8, width / 16),
                c.shape().lines().stream()
                        .map(p -> new Place(p.line(), Math.round(p.at() * width)))
                        .toList(),
                c.shape().lines().isEmpty()
                        ? ""
                        : words.say("cassette.places", c.shape().kit().orElse("?")));
    }
}
