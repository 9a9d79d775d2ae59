package org.tidegate.thirdhand;

import java.util.List;

/**
 * What a picture shows.
 *
 * @param cassettes how many cassettes are in the picture, 0 to 4
 * @param document whether an identity document is
 * @param zone whether most of its machine readable zone is
 * @param control contrast of the control line, 0 to 1 as {@link Lines} says, 0 without one; on several cassettes that of the
 *     first, on a double one that of its first strip; the others have their own, untold
 * @param test the same of the test line
 * @param story what the picture was made of, in words
 */
public record Truth(int cassettes, boolean document, boolean zone, double control, double test, List<String> story) {

    static final String HEADING = "seed,file,cassettes,document,zone,control,test,story";

    /** Copies the story. */
    public Truth {
        story = List.copyOf(story);
    }

    String row(long seed, String file) {
        String words = String.join("; ", story).replace(',', ' ');
        return Story.format("%d,%s,%d,%b,%b,%.3f,%.3f,%s", seed, file, cassettes, document, zone, control, test, words);
    }
}
