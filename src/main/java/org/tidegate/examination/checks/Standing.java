package org.tidegate.examination.checks;

import java.util.Optional;
import java.util.Set;

/**
 * What is known of a submission beside its messages: recorded inputs of {@code assess}.
 *
 * @param readyBeforeLast whether it was ready to be read before its last message came
 * @param reused attachment paths, as {@code message/path}, of photos seen before in another person's submission
 * @param alike the same of photos with a cassette on which the same is written as on one seen before in another person's submission
 * @param quarantinedLots lots that the clinic has set aside
 * @param transcription what the reader wrote down from the cassette, once there is a reader
 */
public record Standing(
        boolean readyBeforeLast,
        Set<String> reused,
        Set<String> alike,
        Set<String> quarantinedLots,
        Optional<Transcription> transcription) {

    public Standing {
        reused = Set.copyOf(reused);
        alike = Set.copyOf(alike);
        quarantinedLots = Set.copyOf(quarantinedLots);
    }

    /** A submission of which nothing is known beside its messages. */
    public static Standing fresh() {
        return new Standing(false, Set.of(), Set.of(), Set.of(), Optional.empty());
    }

    /** The key of a picture in {@link #reused} and {@link #alike}. */
    public static String pictureKey(int message, String path) {
        return message + "/" + path;
    }
}
