package cuelead.dsp.beat;

import java.util.stream.IntStream;

/**
 * Triangular filters on a spectrum, their centres 12 to the octave, as in Böck, Krebs and Schedl 2012, "Evaluating the
 * online capabilities of onset detection methods", section 2.1: every edge is rounded to a bin, edges that fall together
 * are one, and each filter's weights sum to 1.
 */
final class FilterBank {
    private static final double LOWEST_HZ = 30;
    private static final double HIGHEST_HZ = 10_500;
    private static final int BANDS_PER_OCTAVE = 12;

    private final int[] firstBin;
    private final float[][] weights;

    /**
     * @param windowSamples length of the transform
     * @param rateHz        samples a second
     */
    FilterBank(int windowSamples, int rateHz) {
        int edges = (int) Math.floor(BANDS_PER_OCTAVE * log2(HIGHEST_HZ / LOWEST_HZ)) + 2;
        int[] bins = IntStream.range(0, edges)
                .mapToDouble(i -> LOWEST_HZ * Math.pow(2, (double) i / BANDS_PER_OCTAVE))
                .mapToInt(hz -> (int) Math.rint(hz * windowSamples / rateHz))
                .distinct()
                .filter(bin -> bin <= windowSamples / 2)
                .toArray();
        firstBin = new int[bins.length - 2];
        weights = new float[bins.length - 2][];
        for (int band = 0; band < weights.length; band++) {
            firstBin[band] = bins[band] + 1;
            weights[band] = triangle(bins[band], bins[band + 1], bins[band + 2]);
        }
    }

    private static double log2(double x) {
        return Math.log(x) / Math.log(2);
    }

    private static float[] triangle(int low, int centre, int high) {
        double[] heights = new double[high - low - 1];
        double sum = 0;
        for (int bin = low + 1; bin < high; bin++) {
            double height =
                    bin <= centre ? (double) (bin - low) / (centre - low) : (double) (high - bin) / (high - centre);
            heights[bin - low - 1] = height;
            sum += height;
        }
        float[] row = new float[heights.length];
        for (int i = 0; i < row.length; i++) {
            row[i] = (float) (heights[i] / sum);
        }
        return row;
    }

    int bands() {
        return weights.length;
    }

    /** The weighted mean magnitude in one band. */
    float band(int band, float[] magnitudes) {
        float sum = 0;
        float[] row = weights[band];
        for (int i = 0; i < row.length; i++) {
            sum += row[i] * magnitudes[firstBin[band] + i];
        }
        return sum;
    }
}
