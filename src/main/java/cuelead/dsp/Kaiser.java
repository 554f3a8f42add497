package cuelead.dsp;

/** The window of Kaiser 1974, "Nonrecursive digital filter design using the I0-sinh window function". */
final class Kaiser {
    private Kaiser() {}

    /**
     * The window's height.
     *
     * @param x    place in the window: 0 in its middle, -1 and 1 at its ends
     * @param beta shape; more is smoother and wider in frequency
     * @return 1 in the middle, 0 outside
     */
    static double window(double x, double beta) {
        return Math.abs(x) < 1 ? besselI0(beta * Math.sqrt(1 - x * x)) / besselI0(beta) : 0;
    }

    /** Modified Bessel function of order 0, by its power series. */
    private static double besselI0(double x) {
        double sum = 1;
        double term = 1;
        for (int k = 1; term > sum * 1e-17; k++) {
            term *= (x / (2 * k)) * (x / (2 * k));
            sum += term;
        }
        return sum;
    }
}
