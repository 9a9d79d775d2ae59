package org.tidegate.render;

import java.awt.image.BufferedImage;

/** A flat thing on the table: its sheet, the place of its middle in millimetres, and cosine and sine of its turn. */
record Placed(BufferedImage sheet, double x, double y, double cos, double sin) {

    /** @param turn radians */
    Placed(BufferedImage sheet, double x, double y, double turn) {
        this(sheet, x, y, Math.cos(turn), Math.sin(turn));
    }

    double widthMm() {
        return sheet.getWidth() / Paint.SCALE;
    }

    double heightMm() {
        return sheet.getHeight() / Paint.SCALE;
    }

    /** Sheet pixel under a table place. */
    double[] onSheet(double tx, double ty) {
        double dx = tx - x;
        double dy = ty - y;
        double u = dx * cos + dy * sin;
        double v = dy * cos - dx * sin;
        return new double[] {(u + widthMm() / 2) * Paint.SCALE, (v + heightMm() / 2) * Paint.SCALE};
    }

    /** Whether a place is further off than so many millimetres from anything of it; a quick look. */
    boolean beyond(double tx, double ty, double mm) {
        double half = Math.hypot(sheet.getWidth(), sheet.getHeight()) / Paint.SCALE / 2 + mm;
        double dx = tx - x;
        double dy = ty - y;
        return dx * dx + dy * dy > half * half;
    }

    /** How far outside the thing a place is, millimetres; negative inside. */
    double outside(double tx, double ty) {
        double[] at = onSheet(tx, ty);
        double u = Math.abs(at[0] / Paint.SCALE - widthMm() / 2) - widthMm() / 2;
        double v = Math.abs(at[1] / Paint.SCALE - heightMm() / 2) - heightMm() / 2;
        return Math.max(u, v) <= 0 ? Math.max(u, v) : Math.hypot(Math.max(0, u), Math.max(0, v));
    }
}
