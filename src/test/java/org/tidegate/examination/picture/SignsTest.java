package org.tidegate.examination.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tidegate.examination.picture.Regions.Region;
import org.tidegate.finding.PictureFinding.Corner;

/** The signs by which cassettes and documents are told from what only resembles them. */
class SignsTest {

    private static final int SIDE = 60;

    private final BufferedImage block = new BufferedImage(SIDE, SIDE, BufferedImage.TYPE_INT_RGB);
    private final Graphics2D g = block.createGraphics();

    @Test
    void aChequeredBlockIsExplainedByTwoColours() {
        fill(new Color(200, 40, 60), 0, SIDE);
        for (int i = 0; i < 9; i++) {
            g.setColor(Color.WHITE);
            g.fillRect(i % 3 * 20, Math.floorDiv(i, 3) * 20, i % 2 * 20, 20);
        }
        assertThat(unexplained()).isCloseTo(0, within(1e-9));
    }

    /** By hand: three levels 0, 120 and 240 in equal shares; the middle one joins either, and leaves 2·60²·n/3 of 2·120²·n/3. */
    @Test
    void aThirdColourIsWhatTwoLeave() {
        fill(Color.BLACK, 0, 20);
        fill(new Color(120, 120, 120), 20, 40);
        fill(new Color(240, 240, 240), 40, SIDE);
        assertThat(unexplained()).isCloseTo(0.25, within(1e-9));
    }

    @Test
    void oneColourLeavesNothing() {
        fill(Color.GRAY, 0, SIDE);
        assertThat(unexplained()).isZero();
    }

    @Test
    void everyTermHasItsWeight() {
        CassetteSigns all = new CassetteSigns(1, 1, 1, 1, 1, 1, 1, 1, 0, 1, 1, 1, 1, 1);
        CassetteSigns none = new CassetteSigns(0, 0, 0, 0, 0, 0, 0, 0, 1, 0, 0, 0, 0, 0);
        assertThat(all.terms()).hasSameSizeAs(CassetteSigns.WEIGHTS);
        assertThat(all.likelihood()).isGreaterThan(0.95);
        assertThat(none.likelihood()).isLessThan(0.001);
        CardSigns card = new CardSigns(1, 1, 1, 1, 1, 1, 1, 1, List.of());
        assertThat(card.terms()).hasSameSizeAs(CardSigns.WEIGHTS);
        assertThat(card.likelihood()).isGreaterThan(0.95);
        assertThat(new CardSigns(0, 0, 0, 0, 0, 0, 0, 0, List.of()).likelihood())
                .isLessThan(0.001);
    }

    /** {@link DocumentFinder} leaves away what can be no better card: it takes what it has not looked at for as good as can be. */
    @Test
    void nothingOnACardSpeaksAgainstIt() {
        assertThat(Arrays.stream(CardSigns.WEIGHTS).skip(1)).allMatch(w -> w > 0);
    }

    /** A cassette that reaches out of the picture has no edge there, which says nothing against it. */
    @Test
    void whatThePictureCutsOffIsNotMissing() {
        fill(Color.DARK_GRAY, 0, SIDE);
        g.setColor(Color.WHITE);
        g.fillRect(15, 20, 30, 40);
        Pixels picture = Pixels.of(block);
        assertThat(SideFit.seen(upright(20, SIDE), picture)).isBetween(0.5, 0.7);
        assertThat(SideFit.seen(upright(20, 50), picture)).isLessThan(0.1);
    }

    private static Quad upright(int top, int bottom) {
        return new Quad(new Corner(15, top), new Corner(45, top), new Corner(45, bottom), new Corner(15, bottom));
    }

    private double unexplained() {
        Region whole = new Region(SIDE * SIDE, 0, 0, SIDE - 1, SIDE - 1, List.of());
        return TwoColours.of(whole, Pixels.of(block)).unexplained();
    }

    private void fill(Color colour, int fromX, int toX) {
        g.setColor(colour);
        g.fillRect(fromX, 0, toX - fromX, SIDE);
    }
}
