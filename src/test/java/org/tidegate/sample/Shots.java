package org.tidegate.sample;

import java.text.Normalizer;
import java.util.Locale;
import org.tidegate.render.SamplePhoto;

/** The sample morning's photos, drawn by the documented optical model of {@code org.tidegate.render}. */
final class Shots {

    private Shots() {}

    static byte[] jpeg(Shot shot, Booking booking, long seed) {
        SamplePhoto photo = SamplePhoto.seed(1000 + seed)
                .card(capitals(booking.given()), capitals(booking.family()), booking.born())
                .writing(booking.ref().substring(3) + " 4.5 " + booking.slot())
                .lines(seed % 6 == 0 ? 0.4 : 0, 0.7);
        return switch (shot) {
            case CASSETTE_AND_CARD -> photo.jpeg();
            case CASSETTE_ALONE -> photo.withoutCard().jpeg();
            case CARD_ALONE -> photo.withoutCassette().jpeg();
            case BLURRED -> photo.blurred().jpeg();
            case DARK -> photo.dark().jpeg();
            case NEITHER -> photo.withoutCard().withoutCassette().jpeg();
        };
    }

    private static String capitals(String name) {
        return Normalizer.normalize(name.replace("Ł", "L").replace("ł", "l").replace("Ó", "O"), Normalizer.Form.NFD)
                .replaceAll("[^A-Za-z -]", "")
                .toUpperCase(Locale.ROOT);
    }
}
