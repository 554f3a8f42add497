package cuelead.dsp;

import cuelead.time.SampleRate;
import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Supplier;

/**
 * Measures K-weighted power in steps of 100 ms: for each step the mean square of each filtered channel, summed
 * over the channels (left and right weigh 1 each in ITU-R BS.1770-4). These steps are all that
 * {@link IntegratedLoudness} needs to know of a programme; a last step that is not full is left out.
 *
 * <p>Not thread-safe.
 */
public final class BlockPowers {
    private static final double STEP_SECONDS = 0.1;
    /** Of 1 / (1 + x^4)^2, the power that two second-order Butterworth low-passes let through: its integral. */
    private static final double NOISE_WIDTH = 3 * Math.PI / (16 * Math.sin(Math.PI / 4));

    private final int stepFrames;
    private final DoubleUnaryOperator[] channels;
    private float[] powers = new float[1024];
    private int steps;
    private double energy;
    private int framesInStep;

    public BlockPowers(SampleRate rate, int channelCount) {
        this(rate, channelCount, () -> new KWeighting(rate)::filter);
    }

    private BlockPowers(SampleRate rate, int channelCount, Supplier<DoubleUnaryOperator> filters) {
        stepFrames = stepFrames(rate);
        channels = new DoubleUnaryOperator[channelCount];
        Arrays.setAll(channels, channel -> filters.get());
    }

    /**
     * Only of what lies between two frequencies: two Butterworth filters after one another on either side (Linkwitz 1976,
     * "Active crossover networks for noncoincident drivers"), so far apart that as much noise passes as would between
     * straight edges.
     */
    public static BlockPowers between(double fromHz, double toHz, SampleRate rate, int channelCount) {
        Biquad above = Biquad.highPass(fromHz * NOISE_WIDTH, rate);
        // beyond half the rate there is nothing to keep out
        Biquad below = Biquad.lowPass(Math.min(toHz / NOISE_WIDTH, 0.49 * rate.hz()), rate);
        return new BlockPowers(rate, channelCount, () -> {
            Biquad.Stream[] filters = {above.stream(), above.stream(), below.stream(), below.stream()};
            KWeighting weighting = new KWeighting(rate);
            return sample -> {
                double passed = sample;
                for (Biquad.Stream filter : filters) {
                    passed = filter.filter(passed);
                }
                return weighting.filter(passed);
            };
        });
    }

    /** Frames in one step of 100 ms. */
    public static int stepFrames(SampleRate rate) {
        return rate.framesIn(STEP_SECONDS);
    }

    /** Measures the next frames. */
    public void add(float[] interleaved, int frames) {
        int at = 0;
        for (int frame = 0; frame < frames; frame++) {
            for (DoubleUnaryOperator channel : channels) {
                double weighted = channel.applyAsDouble(interleaved[at++]);
                energy += weighted * weighted;
            }
            if (++framesInStep == stepFrames) {
                endStep();
            }
        }
    }

    private void endStep() {
        if (steps == powers.length) {
            powers = Arrays.copyOf(powers, 2 * steps);
        }
        powers[steps++] = (float) (energy / stepFrames);
        energy = 0;
        framesInStep = 0;
    }

    /** The power of every full step so far, full scale = 1. */
    public float[] powers() {
        return Arrays.copyOf(powers, steps);
    }
}
