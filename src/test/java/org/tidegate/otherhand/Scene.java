package org.tidegate.otherhand;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RadialGradientPaint;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;

/** A table with what lies on it, painted flat; the camera turns it into a picture. */
final class Scene {

    private static final double LEAST_CASSETTE = 265;
    private static final double MOST_PIXELS = 5.5e6;

    final BufferedImage canvas;
    final Camera camera;
    final double left;
    final double top;
    final double density;

    private final Draw draw;
    private final Light light;

    Scene(Truth truth, Draw draw) {
        this.draw = draw;
        light = Light.drawn(draw);
        Layout layout = layout(truth);
        while (true) {
            Camera tried = aim(layout);
            if (large(tried, layout)) {
                camera = tried;
                break;
            }
            layout = layout(truth);
        }
        Rectangle2D view = camera.view();
        left = view.getX() - 1;
        top = view.getY() - 1;
        double fine = 1.2 * camera.density(view.getCenterX(), view.getCenterY());
        density = Math.min(fine, Math.sqrt(MOST_PIXELS / ((view.getWidth() + 2) * (view.getHeight() + 2))));
        canvas = new BufferedImage(
                (int) ((view.getWidth() + 2) * density),
                (int) ((view.getHeight() + 2) * density),
                BufferedImage.TYPE_INT_RGB);
        paint(layout, view);
    }

    private Layout layout(Truth truth) {
        Layout layout = new Layout(draw);
        if (truth.document()) {
            layout.add(draw.chance(0.68) ? new Card(draw) : new Passport(draw));
        }
        CassetteLook look = CassetteLook.drawn(draw);
        for (int i = 0; i < truth.cassettes(); i++) {
            layout.add(new Cassette(look, truth, draw));
        }
        if (layout.counted().isEmpty()) {
            layout.add(Clutter.drawn(draw));
        }
        return layout;
    }

    private Camera aim(Layout layout) {
        List<Point2D> keep = new ArrayList<>();
        layout.counted().forEach(p -> keep.addAll(List.of(p.keep())));
        Rectangle2D box = new Rectangle2D.Double(keep.get(0).getX(), keep.get(0).getY(), 0, 0);
        keep.forEach(box::add);
        double spare = layout.counted().size() == 1 ? draw.between(4, 45) : 4;
        keep.add(new Point2D.Double(box.getMinX() - spare, box.getMinY() - spare));
        keep.add(new Point2D.Double(box.getMaxX() + spare, box.getMaxY() + spare));
        boolean tall = box.getHeight() > box.getWidth();
        return Camera.over(keep, draw.chance(0.8) == tall, draw);
    }

    private static boolean large(Camera camera, Layout layout) {
        return layout.counted().stream()
                .filter(p -> p.thing() instanceof Cassette)
                .allMatch(p -> {
                    Point2D[] k = p.keep();
                    return camera.toPicture(k[0].getX(), k[0].getY())
                                    .distance(camera.toPicture(k[1].getX(), k[1].getY()))
                            >= LEAST_CASSETTE;
                });
    }

    private void paint(Layout layout, Rectangle2D view) {
        Tabletop tabletop = Tabletop.drawn(draw);
        BufferedImage coarse =
                new BufferedImage(canvas.getWidth() / 2 + 1, canvas.getHeight() / 2 + 1, BufferedImage.TYPE_INT_RGB);
        tabletop.fill(coarse, left, top, density / 2);
        Graphics2D g = canvas.createGraphics();
        Lettering.hints(g);
        g.drawImage(coarse, 0, 0, coarse.getWidth() * 2, coarse.getHeight() * 2, null);
        g.scale(density, density);
        g.translate(-left, -top);
        if (tabletop.shiny && draw.chance(0.45)) {
            sheen(g, view);
        }
        below(g, layout);
        strays(g, layout, view);
        layout.counted().forEach(p -> p.paint(g, light, camera, draw));
        Fingers fingers = draw.chance(0.22) ? layout.fingers() : null;
        if (fingers != null) {
            fingers.paint(g, light);
        }
        g.dispose();
    }

    private void below(Graphics2D g, Layout layout) {
        if (draw.chance(0.25)) {
            Placed near = layout.counted().get(layout.counted().size() - 1);
            new Placed(
                            Sheets.drawn(draw),
                            near.x() + draw.bell(0, 55),
                            near.y() + draw.bell(0, 55),
                            near.angle() + draw.bell(0, 0.5))
                    .paint(g, light, camera, draw);
        }
    }

    private void strays(Graphics2D g, Layout layout, Rectangle2D view) {
        int count = draw.oneOf(0, 0, 1, 1, 2, 3);
        for (int i = 0; i < count; i++) {
            Placed stray = layout.stray(draw.chance(0.12) ? Sheets.box(draw) : Clutter.drawn(draw), view);
            if (stray != null) {
                stray.paint(g, light, camera, draw);
            }
        }
    }

    /** A window or a lamp mirrored in the table. */
    private void sheen(Graphics2D g, Rectangle2D view) {
        Point2D at = new Point2D.Double(
                view.getX() + draw.between(0, 1) * view.getWidth(),
                view.getY() + draw.between(0, 1) * view.getHeight());
        Color white = new Color(250, 252, 255);
        g.setPaint(new RadialGradientPaint(at, (float) draw.between(30, 130), new float[] {0, 0.3f, 1}, new Color[] {
            Light.faint(white, draw.between(0.2, 0.7)), Light.faint(white, 0.2), Light.faint(white, 0)
        }));
        g.fill(view);
    }
}
