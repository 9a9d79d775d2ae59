package org.tidegate.render;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class SamplePhotoTest {

    @Test
    void theSameCallsGiveTheSameBytesWithinTheLimit() {
        SamplePhoto photo = SamplePhoto.seed(3)
                .card("ROBIN", "STRAKER", "12 MAR 1988")
                .writing("K7QX 4.5 07:04")
                .lines(0.2, 0.7);

        assertThat(photo.jpeg()).isEqualTo(photo.jpeg()).hasSizeLessThanOrEqualTo(SamplePhoto.MOST_BYTES);
    }
}
