package org.tidegate.otherhand;

import java.awt.Color;
import java.awt.Font;
import java.awt.Shape;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;

/** One make of cassette: outline, plastic, print. All cassettes of a picture are of one make. */
record CassetteLook(
        double length,
        double breadth,
        double height,
        Shape outline,
        Color plastic,
        Color ink,
        boolean embossed,
        Font font,
        double reading,
        double corner,
        int ridges,
        boolean plateau,
        int well,
        double[] dye,
        boolean code,
        double bevel) {

    static CassetteLook drawn(Draw draw) {
        double length = draw.between(67, 73);
        double breadth = length / draw.between(3.08, 3.34);
        return new CassetteLook(
                length,
                breadth,
                draw.between(3.5, 5.5),
                outline(length, breadth, draw),
                plastic(draw),
                draw.colour(12, 0x26262c, 0x2b3f74, 0x555a60, 0x8a2433, 0x1f5f54),
                draw.chance(0.25),
                draw.oneOf(Lettering.PLAIN, Lettering.BOLD, Lettering.NARROW),
                draw.oneOf(0, 2, 1, 3) * Math.PI / 2,
                draw.between(0.6, 3.2),
                draw.chance(0.5) ? draw.whole(3, 6) : 0,
                draw.chance(0.4),
                draw.whole(0, 2),
                Strip.dye(draw),
                draw.chance(0.3),
                draw.between(0.5, 1.5));
    }

    private static Color plastic(Draw draw) {
        return draw.chance(0.65)
                ? draw.colour(7, 0xeeeeec, 0xf2f2f0, 0xe6e7e8, 0xf0ece4, 0xe9e6df)
                : draw.colour(6, 0xf0dcdc, 0xd9eade, 0xd6e4f2, 0xe4def0, 0xf1e8cc, 0xd5dadf);
    }

    private static Shape outline(double l, double b, Draw draw) {
        return switch (draw.whole(0, 5)) {
            case 0 -> rounded(l, b, draw.between(1.5, 5));
            case 1 -> waisted(l, b, draw.between(0.6, 1.8));
            case 2 -> roundEnd(l, b, draw.between(5, b / 2), draw.chance(0.5));
            case 3 -> bevelled(l, b, draw.between(1.5, 4.5));
            case 4 -> rounded(l, b, draw.between(5, b / 2.2));
            default -> tongued(l, b, draw.between(1, 2.2));
        };
    }

    private static Shape rounded(double l, double b, double r) {
        return new RoundRectangle2D.Double(0, 0, l, b, 2 * r, 2 * r);
    }

    private static Shape waisted(double l, double b, double in) {
        Path2D p = new Path2D.Double();
        double r = 3;
        p.moveTo(r, 0);
        p.curveTo(l * 0.3, 0, l * 0.3, in, l * 0.5, in);
        p.curveTo(l * 0.7, in, l * 0.7, 0, l - r, 0);
        p.quadTo(l, 0, l, r);
        p.lineTo(l, b - r);
        p.quadTo(l, b, l - r, b);
        p.curveTo(l * 0.7, b, l * 0.7, b - in, l * 0.5, b - in);
        p.curveTo(l * 0.3, b - in, l * 0.3, b, r, b);
        p.quadTo(0, b, 0, b - r);
        p.lineTo(0, r);
        p.quadTo(0, 0, r, 0);
        p.closePath();
        return p;
    }

    private static Shape roundEnd(double l, double b, double r, boolean atWell) {
        Area area = new Area(rounded(l, b, 2));
        double from = atWell ? 0 : l - r;
        area.subtract(new Area(new Rectangle2D.Double(from, -1, r, b + 2)));
        double x = atWell ? 0 : l - 2 * r;
        area.add(new Area(new Ellipse2D.Double(x, 0, 2 * r, 2 * r)));
        area.add(new Area(new Ellipse2D.Double(x, b - 2 * r, 2 * r, 2 * r)));
        area.add(new Area(new Rectangle2D.Double(x, r, 2 * r, Math.max(0, b - 2 * r))));
        return area;
    }

    private static Shape bevelled(double l, double b, double c) {
        Path2D p = new Path2D.Double();
        p.moveTo(c, 0);
        p.lineTo(l - c, 0);
        p.lineTo(l, c);
        p.lineTo(l, b - c);
        p.lineTo(l - c, b);
        p.lineTo(c, b);
        p.lineTo(0, b - c);
        p.lineTo(0, c);
        p.closePath();
        return p;
    }

    /** The two ends a little narrower than the middle. */
    private static Shape tongued(double l, double b, double in) {
        Area area = new Area(new RoundRectangle2D.Double(l * 0.12, 0, l * 0.7, b, 5, 5));
        area.add(new Area(new RoundRectangle2D.Double(0, in, l, b - 2 * in, 7, 7)));
        return area;
    }
}
