package org.tidegate.examination.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A window whose membrane is as light as the body is told by its faint rim. */
class WindowRimTest {

    private static final int LEFT = 140;
    private static final int TOP = 36;
    private static final int RIGHT = 230;
    private static final int BOTTOM = 70;

    private final BufferedImage body = new BufferedImage(340, 106, BufferedImage.TYPE_INT_RGB);
    private final Graphics2D g = body.createGraphics();

    WindowRimTest() {
        g.setColor(new Color(230, 230, 230));
        g.fillRect(0, 0, body.getWidth(), body.getHeight());
        g.setStroke(new BasicStroke(3));
    }

    @Test
    void findsAFaintRim() {
        rim();
        assertAtTheRim(new WindowRim(Surface.of(Pixels.of(body))).upright());
    }

    /** The line is darker than the rim and runs from edge to edge. */
    @Test
    void aLineAcrossTheMembraneIsNoEndOfTheWindow() {
        rim();
        g.setColor(new Color(160, 40, 90));
        g.drawLine(205, TOP, 205, BOTTOM);
        assertAtTheRim(new WindowRim(Surface.of(Pixels.of(body))).upright());
    }

    @Test
    void aRimOpenOnOneSideIsNone() {
        g.setColor(new Color(205, 205, 205));
        g.drawLine(LEFT, TOP, RIGHT, TOP);
        g.drawLine(LEFT, TOP, LEFT, BOTTOM);
        g.drawLine(RIGHT, TOP, RIGHT, BOTTOM);
        assertThat(new WindowRim(Surface.of(Pixels.of(body))).upright()).isEmpty();
    }

    private void rim() {
        g.setColor(new Color(205, 205, 205));
        g.drawRect(LEFT, TOP, RIGHT - LEFT, BOTTOM - TOP);
    }

    private static void assertAtTheRim(Optional<WindowRim.Found> found) {
        assertThat(found).hasValueSatisfying(f -> {
            assertThat(f.left()).isCloseTo(LEFT, within(3));
            assertThat(f.right()).isCloseTo(RIGHT, within(3));
            assertThat(f.top()).isCloseTo(TOP, within(3));
            assertThat(f.bottom()).isCloseTo(BOTTOM, within(3));
        });
    }
}
