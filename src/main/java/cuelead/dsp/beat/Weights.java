package cuelead.dsp.beat;

import java.nio.FloatBuffer;

/** The numbers of a network, handed out in the order in which its layers take them. */
public final class Weights {
    private final FloatBuffer numbers;

    public Weights(FloatBuffer numbers) {
        this.numbers = numbers.duplicate();
    }

    /**
     * The next numbers.
     *
     * @throws IllegalStateException when fewer are left
     */
    public float[] take(int count) {
        if (count > numbers.remaining()) {
            throw new IllegalStateException(
                    "the network's weights end " + (count - numbers.remaining()) + " too early");
        }
        float[] taken = new float[count];
        numbers.get(taken);
        return taken;
    }

    public int left() {
        return numbers.remaining();
    }
}
