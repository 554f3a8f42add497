package cuelead.dsp.beat;

/** The exponential linear unit (Clevert, Unterthiner and Hochreiter 2016): z where it is positive, else exp(z) - 1. */
final class Elu {
    private Elu() {}

    static void apply(float[] values, int count) {
        for (int i = 0; i < count; i++) {
            if (values[i] < 0) {
                values[i] = (float) Math.exp(values[i]) - 1;
            }
        }
    }
}
