package org.tidegate.examination.picture.mrz;

import java.util.List;

/** A straight line through marks: y = at0 + slope · x. */
record Straight(double at0, double slope) {

    double at(double x) {
        return at0 + slope * x;
    }

    double off(Mark m) {
        return m.y() - at(m.x());
    }

    /** Fitted again and again to what lies near it, nearer each time; least squares. */
    Straight refined(List<Mark> marks, double from, double to) {
        Straight now = this;
        for (double near = from; near >= to; near *= 0.7) {
            Straight line = now;
            double within = near;
            now = fit(marks.stream().filter(m -> Math.abs(line.off(m)) < within).toList(), now);
        }
        return now;
    }

    private static Straight fit(List<Mark> marks, Straight otherwise) {
        double n = marks.size();
        double mx = marks.stream().mapToDouble(Mark::x).sum() / n;
        double my = marks.stream().mapToDouble(Mark::y).sum() / n;
        double xx = 0;
        double xy = 0;
        for (Mark m : marks) {
            xx += (m.x() - mx) * (m.x() - mx);
            xy += (m.x() - mx) * (m.y() - my);
        }
        if (n < 4 || xx < 100) {
            return otherwise;
        }
        double slope = xy / xx;
        return new Straight(my - slope * mx, slope);
    }
}
