package org.tidegate.examination.picture;

import java.util.List;
import java.util.stream.IntStream;

/**
 * What a picture looks like, as bits that change little when it is compressed again, resized or brightened. Each is eight words of
 * {@link Spectrum#bits}.
 *
 * @param whole the picture as it stands
 * @param centre the picture without its edges: what a cropped copy still shows
 * @param turned the seven other quarter turns and mirror images
 * @param cropped where the centre would lie if this picture were a cropped copy
 * @param quality 0–100: how much there is to see; a featureless picture's hash means nothing
 */
record PerceptualHash(long[] whole, long[] centre, List<long[]> turned, List<long[]> cropped, int quality) {

    static PerceptualHash of(Luma luma) {
        AreaSums sums = new AreaSums(luma);
        float[][] grid = sums.grid(Window.WHOLE, Spectrum.SIDE);
        Spectrum whole = Spectrum.of(grid);
        return new PerceptualHash(
                whole.bits(),
                bits(sums, Window.CENTRE),
                IntStream.range(1, 8).mapToObj(v -> whole.varied(v).bits()).toList(),
                Window.centresOfCropped().stream().map(w -> bits(sums, w)).toList(),
                quality(grid));
    }

    private static long[] bits(AreaSums sums, Window window) {
        return Spectrum.of(sums.grid(window, Spectrum.SIDE)).bits();
    }

    /** Sum of the steps between neighbours, scaled as published with the method. */
    private static int quality(float[][] grid) {
        int sum = 0;
        for (int y = 0; y < Spectrum.SIDE; y++) {
            for (int x = 0; x < Spectrum.SIDE; x++) {
                sum += y + 1 < Spectrum.SIDE ? step(grid[y][x], grid[y + 1][x]) : 0;
                sum += x + 1 < Spectrum.SIDE ? step(grid[y][x], grid[y][x + 1]) : 0;
            }
        }
        return Math.min(100, sum / 90);
    }

    private static int step(float a, float b) {
        return Math.abs((int) ((a - b) * 100 / 255));
    }
}
