package cuelead.dsp.beat;

/** The inner loop of all layers, in a shape that the compiler turns into vector instructions. */
final class MultiplyAdd {
    private MultiplyAdd() {}

    /** Adds {@code weight * in} to {@code out}, from the given places on. */
    static void run(float weight, float[] in, int inAt, float[] out, int outAt, int count) {
        for (int i = 0; i < count; i++) {
            out[outAt + i] += weight * in[inAt + i];
        }
    }
}
