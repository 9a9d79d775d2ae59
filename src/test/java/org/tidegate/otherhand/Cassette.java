package org.tidegate.otherhand;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.LinearGradientPaint;
import java.awt.Shape;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;

/** A cassette of the kit SKERRY-20 by the fractions of {@code rules/protocols.yaml}; its length starts at the sample well. */
final class Cassette implements Thing {

    private final CassetteLook look;
    private final Truth truth;
    private final Draw draw;
    private final Rectangle2D window;
    private final String written;

    Cassette(CassetteLook look, Truth truth, Draw draw) {
        this.look = look;
        this.truth = truth;
        this.draw = draw;
        double breadth = 0.45 * look.breadth();
        window = new Rectangle2D.Double(
                0.38 * look.length(), (look.breadth() - breadth) / 2, 0.28 * look.length(), breadth);
        written = draw.chance(0.6) ? writing() : "";
    }

    private String writing() {
        return switch (draw.whole(0, 2)) {
            case 0 -> draw.letters(4, "ABCDEFHJKLMNPRTUVWXY34679");
            case 1 -> draw.whole(6, 21) + ":" + draw.whole(0, 5) + draw.whole(0, 9);
            default -> draw.letters(1, "ABDEFGHJKLMR") + "." + draw.letters(1, "BCDFGHKLMST") + ".";
        };
    }

    @Override
    public Shape outline() {
        return look.outline();
    }

    @Override
    public double height() {
        return look.height();
    }

    @Override
    public Color wall() {
        return look.plastic();
    }

    /** A membrane is dull. */
    @Override
    public Shape glossy() {
        Area plastic = new Area(look.outline());
        plastic.subtract(new Area(window));
        return plastic;
    }

    @Override
    public double gloss() {
        return 0.35;
    }

    @Override
    public void paint(Graphics2D g, Light light) {
        Graphics2D body = (Graphics2D) g.create();
        body.clip(look.outline());
        body.setColor(look.plastic());
        body.fill(look.outline());
        edge(body, light);
        if (look.plateau()) {
            plateau(body, light);
        }
        ridges(body, light);
        well(body, light);
        result(body, light);
        print(body, light);
        body.dispose();
    }

    /** The rounded-over edge: lit towards the light, dark away from it. */
    private void edge(Graphics2D g, Light light) {
        g.setPaint(across(outline().getBounds2D(), light, 1.07, 0.8));
        g.setStroke(new BasicStroke((float) (2 * look.bevel()), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(look.outline());
    }

    private LinearGradientPaint across(Rectangle2D b, Light light, double near, double far) {
        double reach = Math.abs(light.x()) * b.getWidth() / 2 + Math.abs(light.y()) * b.getHeight() / 2;
        return new LinearGradientPaint(
                new Point2D.Double(b.getCenterX() - light.x() * reach, b.getCenterY() - light.y() * reach),
                new Point2D.Double(b.getCenterX() + light.x() * reach, b.getCenterY() + light.y() * reach),
                new float[] {0, 0.35f, 0.65f, 1},
                new Color[] {
                    Light.shade(look.plastic(), near), look.plastic(), look.plastic(), Light.shade(look.plastic(), far)
                });
    }

    private void plateau(Graphics2D g, Light light) {
        Shape raised = new RoundRectangle2D.Double(
                0.07 * look.length(), 0.1 * look.breadth(), 0.62 * look.length(), 0.8 * look.breadth(), 5, 5);
        g.setPaint(across(raised.getBounds2D(), light, 1.06, 0.84));
        g.setStroke(new BasicStroke(0.5f));
        g.draw(raised);
    }

    private void ridges(Graphics2D g, Light light) {
        g.setStroke(new BasicStroke(0.35f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        for (int i = 0; i < look.ridges(); i++) {
            double x = look.length() * 0.975 - 1.7 * i - 1;
            double y = 0.22 * look.breadth();
            g.setColor(light.on(look.plastic(), -1, 0, 0.18));
            g.draw(new Line2D.Double(x, y, x, look.breadth() - y));
            g.setColor(light.on(look.plastic(), 1, 0, 0.18));
            g.draw(new Line2D.Double(x + 0.45, y, x + 0.45, look.breadth() - y));
        }
    }

    private void well(Graphics2D g, Light light) {
        double long2 = look.well() == 0 ? 3.1 : draw.between(3.6, 4.8);
        double short2 = look.well() == 2 ? 2.4 : 3.1;
        double x = 0.2 * look.length();
        double y = look.breadth() / 2;
        double rim = 1.5;
        Shape funnel = new Ellipse2D.Double(x - long2 - rim, y - short2 - rim, 2 * (long2 + rim), 2 * (short2 + rim));
        g.setPaint(across(funnel.getBounds2D(), light, 0.78, 1.06));
        g.fill(funnel);
        Shape hole = new Ellipse2D.Double(x - long2, y - short2, 2 * long2, 2 * short2);
        Color pad = draw.colour(12, 0xd9d2c6, 0xcfc8c4, 0xdcc9c4, 0xbdb6ae);
        g.setColor(pad);
        g.fill(hole);
        Recess.shade(g, hole, light, draw.between(0.8, 1.6), 0.45);
    }

    private void result(Graphics2D g, Light light) {
        double rim = draw.between(0.8, 1.5);
        Recess.rim(g, window, rim, look.corner(), look.plastic(), light);
        Shape opening = new RoundRectangle2D.Double(
                window.getX(),
                window.getY(),
                window.getWidth(),
                window.getHeight(),
                2 * look.corner(),
                2 * look.corner());
        Graphics2D in = (Graphics2D) g.create();
        in.clip(opening);
        in.setColor(Light.shade(look.plastic(), 0.86));
        in.fill(opening);
        double side = draw.chance(0.7) ? 0 : draw.between(0, 0.15) * window.getHeight();
        double breadth = window.getHeight() - 2 * side;
        BufferedImage strip = new Strip(window.getWidth(), look.dye(), draw)
                .image(breadth, truth.testContrast(), truth.controlContrast());
        in.translate(window.getX(), window.getY() + side);
        in.scale(window.getWidth() / strip.getWidth(), breadth / strip.getHeight());
        in.drawImage(strip, 0, 0, null);
        in.dispose();
        Recess.shade(g, opening, light, draw.between(0.6, 1.5), draw.between(0.15, 0.45));
    }

    private void print(Graphics2D g, Light light) {
        double off = (look.breadth() - window.getHeight()) / 4 - 0.3;
        boolean above = look.reading() < Math.PI;
        double y = above ? off : look.breadth() - off;
        letter(g, "T", window.getX() + 0.36 * window.getWidth(), y, light);
        letter(g, "C", window.getX() + 0.70 * window.getWidth(), y, light);
        letter(g, "S", 0.3 * look.length(), look.breadth() / 2, light);
        g.setColor(look.ink());
        double flat = above ? 0 : Math.PI;
        if (draw.chance(0.6)) {
            double other = above ? look.breadth() - off : off;
            Lettering.centred(g, "SKERRY-20", 0.5 * look.length(), other, 1.7, Lettering.BOLD, flat);
        }
        if (draw.chance(0.5)) {
            String lot = "LOT SK26" + draw.whole(10, 99);
            Lettering.centred(g, lot, 0.17 * look.length(), look.breadth() - 2.6, 1.1, Lettering.PLAIN, flat);
        }
        if (look.code()) {
            Patterns.matrix(g, 0.885 * look.length(), look.breadth() / 2 - 2.4, 4.8, look.ink(), draw);
        }
        if (!written.isEmpty()) {
            double turn = draw.chance(0.5) ? Math.PI / 2 : -Math.PI / 2;
            double tall = Math.min(draw.between(2.6, 4.4), 0.85 * look.breadth() / written.length() / 0.8);
            Lettering.hand(g, written, 0.77 * look.length(), look.breadth() / 2, tall, turn + draw.bell(0, 0.08), draw);
        }
    }

    private void letter(Graphics2D g, String text, double x, double y, Light light) {
        double turn = look.reading();
        if (look.embossed()) {
            g.setColor(Light.shade(look.plastic(), 0.8));
            Lettering.centred(g, text, x + 0.15 * light.x(), y + 0.15 * light.y(), 2.4, look.font(), turn);
            g.setColor(Light.shade(look.plastic(), 1.03));
        } else {
            g.setColor(look.ink());
        }
        Lettering.centred(g, text, x, y, 2.4, look.font(), turn);
    }
}
