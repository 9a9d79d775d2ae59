package org.tidegate.examination.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.tidegate.examination.picture.DyeBars.Bar;
import org.tidegate.rules.Protocol.CassetteShape;

/** Lines on a body drawn without rim and well tell where its window lies, and which of its ends is the sample's. */
class DyeBarsTest {

    private static final int LENGTH = 340;
    private static final int BREADTH = 106;
    private static final Color DYE = new Color(190, 110, 150);

    private final BufferedImage body = new BufferedImage(LENGTH, BREADTH, BufferedImage.TYPE_INT_RGB);
    private final Graphics2D g = body.createGraphics();
    private final CassetteShape shape = LiveRules.read().protocols().get(0).cassette();

    DyeBarsTest() {
        fill(Color.WHITE, 0, LENGTH);
    }

    @Test
    void aBarIsMeasuredWhereItLies() {
        line(DYE, 0.58, 0.28, 0.72);
        assertThat(bars()).hasSize(1).first().satisfies(bar -> {
            assertThat(bar.at()).isCloseTo(0.58, within(0.01));
            assertThat(bar.fromV()).isCloseTo(0.28, within(0.04));
            assertThat(bar.toV()).isCloseTo(0.72, within(0.04));
        });
    }

    @Test
    void greyIsNoDyeAndAStripeFromEdgeToEdgeNoBar() {
        line(new Color(150, 150, 150), 0.5, 0.28, 0.72);
        line(DYE, 0.6, 0, 1);
        assertThat(bars()).isEmpty();
    }

    /** The rim of a window takes of all colours, the light on it makes it a little coloured. */
    @Test
    void aTintedRimBesideALineIsNoLine() {
        Color rim = new Color(150, 158, 168);
        line(rim, 0.65, 0.28, 0.72);
        assertThat(bars()).as("alone it is seen").hasSize(1);
        line(DYE, 0.54, 0.28, 0.72);
        assertThat(bars()).singleElement().satisfies(b -> assertThat(b.at()).isCloseTo(0.54, within(0.01)));
    }

    /** A hand over the far end: all that is seen lies further on than the kit has it. */
    @Test
    void twoLinesThatLieTogetherAreBelievedOnAShortenedBody() {
        line(DYE, place("T") + 0.1, 0.28, 0.72);
        assertThat(window(1))
                .as("alone it is the control line of a whole body")
                .hasValueSatisfying(w -> assertThat(w.box().fromU()).isCloseTo(shape.windowFrom(), within(0.01)));
        line(DYE, place("C") + 0.1, 0.28, 0.72);
        assertThat(window(1)).hasValueSatisfying(w -> {
            assertThat(w.turned()).isFalse();
            assertThat(w.box().fromU()).isCloseTo(shape.windowFrom() + 0.1, within(0.01));
        });
        assertThat(window(0))
                .as("nothing tells the sample end")
                .hasValueSatisfying(w -> assertThat(w.quality()).isLessThan(0.7));
    }

    /** Half of the body in a shadow that takes four tenths of the light. */
    @Test
    void theEdgeOfAShadowIsNoBar() {
        fill(new Color(153, 153, 153), (int) (0.55 * LENGTH), LENGTH);
        assertThat(bars()).isEmpty();
    }

    @Test
    void oneColourBesideAnotherIsNoBar() {
        fill(new Color(240, 210, 220), (int) (0.38 * LENGTH), (int) (0.66 * LENGTH));
        assertThat(bars()).isEmpty();
    }

    @Test
    void aLonelyLineIsTheControlLineAndTellsTheSampleEnd() {
        line(DYE, place("C"), 0.28, 0.72);
        assertThat(window(0)).hasValueSatisfying(w -> {
            assertThat(w.turned()).isFalse();
            assertThat(w.box().fromU()).isCloseTo(shape.windowFrom(), within(0.01));
        });
        fill(Color.WHITE, 0, LENGTH);
        line(DYE, 1 - place("C"), 0.28, 0.72);
        assertThat(window(0)).hasValueSatisfying(w -> assertThat(w.turned()).isTrue());
    }

    /** A strip on which the control line is missing shows no result (common practice, no source): it must not pass for one that shows it. */
    @Test
    void aTestLineAloneIsSaidOnlyWhereAWellTellsTheSampleEnd() {
        line(DYE, place("T"), 0.28, 0.72);
        assertThat(window(0)).isEmpty();
        assertThat(window(1)).hasValueSatisfying(w -> {
            assertThat(w.turned()).isFalse();
            assertThat(w.box().fromU()).isCloseTo(shape.windowFrom(), within(0.01));
        });
    }

    @Test
    void aLineThatFitsNoKitIsNoWindow() {
        line(DYE, 0.33, 0.28, 0.72);
        assertThat(window(0)).isEmpty();
    }

    private double place(String name) {
        double at = shape.lines().stream()
                .filter(l -> l.name().equals(name))
                .findFirst()
                .orElseThrow()
                .at();
        return shape.windowFrom() + at * (shape.windowTo() - shape.windowFrom());
    }

    private List<Bar> bars() {
        return DyeBars.on(Surface.of(Pixels.of(body)));
    }

    private Optional<KitWindow> window(double wellAt) {
        return KitWindow.around(bars(), shape, wellAt);
    }

    private void fill(Color colour, int from, int to) {
        g.setColor(colour);
        g.fillRect(from, 0, to - from, BREADTH);
    }

    private void line(Color colour, double at, double fromV, double toV) {
        g.setColor(colour);
        g.fillRect((int) Math.round(at * LENGTH) - 2, (int) (fromV * BREADTH), 4, (int) ((toV - fromV) * BREADTH));
    }
}
