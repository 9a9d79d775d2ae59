package org.tidegate.render;

import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * One photo for the sample mailbox: a cassette with handwriting beside an invented card, unless told otherwise. Immutable; the same calls give
 * the same bytes.
 *
 * <pre>{@code
 * byte[] jpeg = SamplePhoto.seed(7).card("ROBIN", "STRAKER", "12 MAR 1988").writing("K7QX 4.5 07:04").jpeg();
 * }</pre>
 *
 * Only capitals, digits and {@code < - : . /} are drawn; writing is broken into lines at its first two blanks.
 */
public final class SamplePhoto {

    /** Files stay below this many bytes. */
    public static final int MOST_BYTES = 150_000;

    private static final int WIDTH = 1200;
    private static final int HEIGHT = 900;
    private static final double WIDTH_MM = 150;

    private enum Fault {
        NONE,
        BLUR,
        DARK,
        GLARE,
        SMALL
    }

    private record Person(String given, String family, String born) {}

    private record Spec(
            long seed,
            String writing,
            Person person,
            double t,
            double c,
            boolean card,
            boolean page,
            int cassettes,
            Fault fault) {}

    private final Spec spec;

    private SamplePhoto(Spec spec) {
        this.spec = spec;
    }

    /** Table, colours, places and light follow from the seed. */
    public static SamplePhoto seed(long seed) {
        return new SamplePhoto(
                new Spec(seed, "", new Person("ROBIN", "STRAKER", "12 MAR 1988"), 0, 0.7, true, false, 1, Fault.NONE));
    }

    /** What the participant wrote on the cassette: mark, date, time. */
    public SamplePhoto writing(String text) {
        return new SamplePhoto(new Spec(
                spec.seed, text, spec.person, spec.t, spec.c, spec.card, spec.page, spec.cassettes, spec.fault));
    }

    /** An ID-1 card of this person. */
    public SamplePhoto card(String given, String family, String born) {
        return document(new Person(given, family, born), true, false);
    }

    /** A passport page (ID-3) of this person. */
    public SamplePhoto passport(String given, String family, String born) {
        return document(new Person(given, family, born), true, true);
    }

    public SamplePhoto withoutCard() {
        return document(spec.person, false, false);
    }

    private SamplePhoto document(Person person, boolean card, boolean page) {
        return new SamplePhoto(
                new Spec(spec.seed, spec.writing, person, spec.t, spec.c, card, page, spec.cassettes, spec.fault));
    }

    /** Strengths of the lines, 0–1; 0 for none. */
    public SamplePhoto lines(double test, double control) {
        return new SamplePhoto(new Spec(
                spec.seed, spec.writing, spec.person, test, control, spec.card, spec.page, spec.cassettes, spec.fault));
    }

    public SamplePhoto withoutCassette() {
        return cassettes(0);
    }

    /** None, one or two of them. */
    public SamplePhoto cassettes(int count) {
        return new SamplePhoto(new Spec(
                spec.seed, spec.writing, spec.person, spec.t, spec.c, spec.card, spec.page, count, spec.fault));
    }

    public SamplePhoto blurred() {
        return fault(Fault.BLUR);
    }

    public SamplePhoto dark() {
        return fault(Fault.DARK);
    }

    public SamplePhoto glaring() {
        return fault(Fault.GLARE);
    }

    public SamplePhoto small() {
        return fault(Fault.SMALL);
    }

    private SamplePhoto fault(Fault fault) {
        return new SamplePhoto(new Spec(
                spec.seed, spec.writing, spec.person, spec.t, spec.c, spec.card, spec.page, spec.cassettes, fault));
    }

    /** JPEG without EXIF, at most {@link #MOST_BYTES}. */
    public byte[] jpeg() {
        return JpegFile.within(image(), 0.85, MOST_BYTES);
    }

    public BufferedImage image() {
        Random random = new Random(spec.seed);
        boolean small = spec.fault == Fault.SMALL;
        View view = View.random(random, small ? 200 : WIDTH, small ? 150 : HEIGHT, WIDTH_MM * (spec.page ? 1.25 : 1));
        List<Placed> things = things(random);
        LinearImage image = new Stage(Table.random(random), things, List.of(), view).draw();
        optics(Optics.ordinary(random)).apply(image, random);
        return image.coded();
    }

    private Optics optics(Optics ordinary) {
        Optics readable = ordinary.defocused(Math.min(1.2, ordinary.defocus())).moved(0);
        return switch (spec.fault) {
            case BLUR -> readable.defocused(34);
            case DARK -> readable.exposed(0.012);
            case GLARE -> readable.glaring(4, 0.5, spec.page ? 0.6 : 0.57, 0.34);
            case NONE, SMALL -> readable;
        };
    }

    private List<Placed> things(Random random) {
        List<Placed> things = new ArrayList<>();
        double lean = 0.3 * (random.nextDouble() - 0.5);
        if (spec.card) {
            CardLook card = CardLook.of(spec.person.given, spec.person.family, spec.person.born, random);
            CardLook look = spec.page ? card.asPage() : card;
            things.add(lay(CardPainter.paint(look), 0, spec.page ? -17 : -16, lean, random));
        }
        for (int i = 0; i < spec.cassettes; i++) {
            CassetteLook look = CassetteLook.skerry20(spec.t, spec.c, spec.writing);
            double below = spec.card ? (spec.page ? 41 : 25) : 0;
            things.add(lay(
                    CassettePainter.paint(look, random),
                    0,
                    below + 24 * i,
                    lean + (random.nextBoolean() ? 0 : Math.PI),
                    random));
        }
        return things;
    }

    private static Placed lay(BufferedImage sheet, double x, double y, double turn, Random random) {
        return new Placed(
                sheet,
                x + 3 * (random.nextDouble() - 0.5),
                y + 1.5 * (random.nextDouble() - 0.5),
                turn + 0.04 * (random.nextDouble() - 0.5));
    }
}
