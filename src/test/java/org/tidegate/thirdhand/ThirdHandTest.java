package org.tidegate.thirdhand;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ThirdHandTest {

    /** Small pictures, which are painted fast. */
    private static final long WITHOUT_DOCUMENT = 111;

    private static final long WITH_ZONE = 18;

    @Test
    void theSameSeedGivesTheSameBytes() {
        ThirdHand.Picture picture = ThirdHand.picture(WITHOUT_DOCUMENT);

        assertThat(ThirdHand.picture(WITHOUT_DOCUMENT).jpeg()).isEqualTo(picture.jpeg());
        assertThat(picture.truth().document()).isFalse();
        assertThat(picture.truth().zone()).isFalse();
    }

    @Test
    void aPictureWithADocumentSaysSo() {
        Truth truth = ThirdHand.picture(WITH_ZONE).truth();

        assertThat(truth.document()).isTrue();
        assertThat(truth.zone()).isTrue();
    }

    /** The worked examples of ICAO 9303 part 3, 4.9. */
    @ParameterizedTest
    @CsvSource({"520727, 3", "AB2134<<<, 5"})
    void checkDigitsAreThoseOfTheStandard(String text, int digit) {
        assertThat(Zone.checkDigit(text)).isEqualTo(digit);
    }
}
