package org.tidegate.examination.picture;

import java.util.List;
import java.util.Optional;

/**
 * What a cassette's crop is of, once the picture is forgotten. Places, never what was seen there.
 *
 * @param kit whose geometry fits best
 * @param width in pixels; the end where the sample goes on is left
 * @param height in pixels
 * @param lines where the kit's lines have their places
 */
public record CropShape(Optional<String> kit, int width, int height, List<Place> lines) {

    /** @param at as a share of the crop's width */
    public record Place(String line, double at) {}

    public CropShape {
        lines = List.copyOf(lines);
    }
}
