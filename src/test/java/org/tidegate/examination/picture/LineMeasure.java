package org.tidegate.examination.picture;

import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.LongStream;
import org.tidegate.finding.PictureFinding.CassetteFinding;
import org.tidegate.finding.PictureFinding.Line;
import org.tidegate.render.TestScene;

public final class LineMeasure {
    private LineMeasure() {}

    public static void main(String[] a) {
        int n = Integer.parseInt(a[0]);
        long first = Long.parseLong(a[1]);
        boolean unseen = a.length > 2 && a[2].equals("unseen");
        var rules = LiveRules.read();
        SceneFinder finder = new SceneFinder(rules.protocols(), rules.pictures(), ZoneReader.NONE);
        LongStream.range(first, first + n).parallel().forEach(seed -> {
            double strength = seed % 2 == 0 ? 0 : 0.005 * Math.pow(100, new Random(seed * 31).nextDouble());
            List<CassetteFinding> c = finder.read(FinePicture.of(
                            TestScene.withLine(seed, unseen, strength).image()))
                    .cassettes();
            if (c.size() == 1) {
                Line t = c.get(0).lines().get("T");
                System.out.printf(
                        Locale.ROOT,
                        "%d\t%.4f\t%b\t%.5f\t%.5f%n",
                        seed,
                        strength,
                        t.present(),
                        t.strength(),
                        t.noise());
            }
        });
    }
}
