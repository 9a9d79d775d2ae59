package org.tidegate.examination.picture;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import javax.imageio.ImageIO;
import org.tidegate.finding.PictureFinding.CassetteFinding;
import org.tidegate.finding.PictureFinding.Line;
import org.tidegate.render.TestScene;

/**
 * How faint a test line may be and still be found, and how far the stated confidence can be believed:
 * {@code java -cp target/classes:target/test-classes:… org.tidegate.examination.picture.LineMeasure [pictures] [first seed] [OUT.png] [tuning]}.
 * One cassette a picture; half of them have no test line, the others one of 0.5 to 50 %, each factor as likely.
 */
public final class LineMeasure {

    private static final double[] STEPS = {0.005, 0.01, 0.02, 0.03, 0.04, 0.05, 0.06, 0.08, 0.1, 0.15, 0.2, 0.5};
    private static final double FAINTEST = 0.005;
    private static final double SPAN = 100;

    /** @param strength of the line that was drawn, 0 for none */
    record Told(double strength, boolean present, double confidence) {}

    private LineMeasure() {}

    public static void main(String[] arguments) throws IOException {
        List<String> given = Arrays.asList(arguments);
        int pictures = given.isEmpty() ? 1000 : Integer.parseInt(given.get(0));
        long first = given.size() > 1 ? Long.parseLong(given.get(1)) : 4_000_000;
        List<Told> told = measure(pictures, first, !given.contains("tuning"));
        ladder(told);
        ReliabilityDiagram diagram = ReliabilityDiagram.of(told);
        System.out.print(diagram.text());
        if (given.size() > 2) {
            ImageIO.write(diagram.image(), "png", Path.of(given.get(2)).toFile());
        }
    }

    private static List<Told> measure(int pictures, long first, boolean unseen) {
        SceneFinder finder =
                new SceneFinder(LiveRules.read().protocols(), LiveRules.read().pictures(), ZoneReader.NONE);
        List<Told> told = Collections.synchronizedList(new ArrayList<>());
        LongStream.range(first, first + pictures).parallel().forEach(seed -> {
            double strength = seed % 2 == 0 ? 0 : FAINTEST * Math.pow(SPAN, new SplittableRandom(seed).nextDouble());
            List<CassetteFinding> cassettes = finder.read(FinePicture.of(
                            TestScene.withLine(seed, unseen, strength).image()))
                    .cassettes();
            if (cassettes.size() == 1) {
                Line test = cassettes.get(0).lines().get("T");
                told.add(new Told(strength, test.present(), LineConfidence.of(test)));
            }
        });
        return told;
    }

    private static void ladder(List<Told> told) {
        long blank = told.stream().filter(t -> t.strength() == 0).count();
        long falsely =
                told.stream().filter(t -> t.strength() == 0 && t.present()).count();
        System.out.printf(Locale.ROOT, "no line: found falsely %d of %d%n", falsely, blank);
        for (int i = 1; i < STEPS.length; i++) {
            double from = STEPS[i - 1];
            double to = STEPS[i];
            List<Told> step = told.stream()
                    .filter(t -> t.strength() >= from && t.strength() < to)
                    .toList();
            long found = step.stream().filter(Told::present).count();
            System.out.printf(
                    Locale.ROOT,
                    "contrast %.1f to %.1f %%: found %d of %d%n",
                    100 * from,
                    100 * to,
                    found,
                    step.size());
        }
    }
}
