package org.tidegate.thirdhand;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ThirdHandTest {

    /** A small picture, which is painted fast. */
    private static final long WITH_ZONE = 18;

    private static final long WITHOUT_DOCUMENT = 111;

    @Test
    void theSameSeedGivesTheSameBytes() {
        ThirdHand.Picture picture = ThirdHand.picture(WITH_ZONE);

        assertThat(ThirdHand.picture(WITH_ZONE).jpeg()).isEqualTo(picture.jpeg());
        assertThat(picture.truth().document()).isTrue();
        assertThat(picture.truth().zone()).isTrue();
    }

    @Test
    void aPictureWithoutADocumentSaysSo() {
        Truth truth = new Scene(Draws.ofPicture(WITHOUT_DOCUMENT)).truth(List.of());

        assertThat(truth.document()).isFalse();
        assertThat(truth.zone()).isFalse();
    }

    /** The worked examples of ICAO 9303 part 3, 4.9. */
    @ParameterizedTest
    @CsvSource({"520727, 3", "AB2134<<<, 5"})
    void checkDigitsAreThoseOfTheStandard(String text, int digit) {
        assertThat(Zone.checkDigit(text)).isEqualTo(digit);
    }
}
