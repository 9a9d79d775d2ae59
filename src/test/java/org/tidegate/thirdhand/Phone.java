package org.tidegate.thirdhand;

import java.util.ArrayList;
import java.util.List;

/**
 * One phone and one hand: how the picture is blurred, exposed and processed. What phones do is common practice, no source; how
 * often each fault turns up is a guess.
 */
final class Phone {

    private static final double HAZE = 0.03;
    private static final double SQRT_3 = 1.73;
    /** Shot noise, as variance per light, and noise of reading, as deviation, at {@code iso} 1. */
    private static final double SHOT = 0.0027;

    private static final double READ = 0.0032;

    private final List<String> story = new ArrayList<>();
    private final double blur;
    private final double motion;
    private final double direction;
    private final double iso;
    private final double stops;
    private final double vignette;
    private final Rgb whiteError;
    private final boolean hazy;
    private final Processing processing;
    private final double quality;

    /** @param longSide of the picture, pixels */
    Phone(Draws draws, int longSide) {
        double size = longSide / 2000.0;
        double fault = draws.share();
        if (fault < 0.1) {
            blur = size * draws.between(1.8, 4.5);
            story.add(Story.format("defocus %.1fpx", blur));
        } else {
            boolean soft = fault >= 0.2 && fault < 0.4;
            blur = soft ? size * draws.between(0.9, 1.6) : 0.55 + 0.25 * size;
        }
        boolean shaken = fault >= 0.1 && fault < 0.2;
        motion = shaken ? size * draws.between(4, 14) : 0;
        direction = shaken ? draws.turn() : 0;
        if (shaken) {
            story.add(Story.format("motion %.0fpx", motion));
        }
        iso = Math.exp(draws.between(-1.6, 1.3));
        tell("noisy", iso > 1.8);
        stops = stops(draws);
        vignette = draws.between(0.05, 0.45);
        double sharpen = draws.chance(0.75) ? draws.between(0.3, 1.5) : 0;
        quality = draws.between(0.4, 0.95);
        processing = new Processing(sharpen, draws.between(0.85, 1.25), draws.between(0.3, 1.5));
        whiteError = whiteError(draws);
        hazy = draws.chance(0.05);
        tell("hazy lens", hazy);
        story.add("q" + Math.round(quality * 100));
    }

    private void tell(String words, boolean so) {
        if (so) {
            story.add(words);
        }
    }

    private double stops(Draws draws) {
        double usual = draws.bell() * 0.25;
        if (draws.chance(0.07)) {
            story.add("underexposed");
            return draws.between(-2, -0.9);
        }
        if (draws.chance(0.06)) {
            story.add("overexposed");
            return draws.between(0.6, 1.2);
        }
        return usual;
    }

    private Rgb whiteError(Draws draws) {
        double usual = draws.bell() * 0.06;
        double green = draws.bell() * 0.02;
        boolean off = draws.chance(0.08);
        tell("wb off", off);
        double warm = off ? usual * 3 : usual;
        return new Rgb(1 + warm, 1 + green, 1 - warm * 1.2);
    }

    List<String> story() {
        return List.copyOf(story);
    }

    /** Of the JPEG, 0 to 1. */
    double quality() {
        return quality;
    }

    /** From the light of the scene to sRGB, 0 to 1. */
    Frame shoot(Frame scene, long seed) {
        Frame sharp = Optics.moved(Optics.gaussian(scene, blur), motion, direction);
        Rgb gains = Exposure.gains(sharp, new Draws(seed)).times(whiteError).times(Math.pow(2, stops));
        Frame noisy = sharp.changed(sensor(gains, sharp, (int) seed));
        Frame denoised = Optics.gaussian(noisy, iso > 0.8 ? 0.45 + 0.15 * iso : 0.35);
        return processing.of(denoised);
    }

    private Frame.Change sensor(Rgb gains, Frame frame, int seed) {
        return (i, j, light) -> {
            double dx = (2.0 * i - frame.width()) / frame.longSide();
            double dy = (2.0 * j - frame.height()) / frame.longSide();
            Rgb exposed = light.times(gains).times(1 - vignette * (dx * dx + dy * dy));
            int k = 3 * i;
            return new Rgb(
                    noisy(exposed.red(), bell(k, j, seed) * 1.5),
                    noisy(exposed.green(), bell(k + 1, j, seed)),
                    noisy(exposed.blue(), bell(k + 2, j, seed) * 1.5));
        };
    }

    private double noisy(double exposed, double bell) {
        double light = exposed + (hazy ? HAZE : 0);
        double read = READ * iso;
        return light + bell * Math.sqrt(Math.max(0, light) * SHOT * iso + read * read);
    }

    /** Nearly normal, deviation 1: a sum of four even draws. */
    private static double bell(int x, int y, int seed) {
        double sum = 0;
        for (int i = 0; i < 4; i++) {
            sum += Noise.point(x, y, seed + i);
        }
        return (sum - 2) * SQRT_3;
    }
}
