package cuelead.dsp;

import cuelead.time.SampleRate;
import java.util.Arrays;

/**
 * Measures K-weighted power in steps of 100 ms: for each step the mean square of each filtered channel, summed
 * over the channels (left and right weigh 1 each in ITU-R BS.1770-4). These steps are all that
 * {@link IntegratedLoudness} needs to know of a programme; a last step that is not full is left out.
 *
 * <p>Not thread-safe.
 */
public final class BlockPowers {
    private static final double STEP_SECONDS = 0.1;

    private final int stepFrames;
    private final KWeighting[] channels;
    private float[] powers = new float[1024];
    private int steps;
    private double energy;
    private int framesInStep;

    public BlockPowers(SampleRate rate, int channelCount) {
        stepFrames = stepFrames(rate);
        channels = new KWeighting[channelCount];
        Arrays.setAll(channels, channel -> new KWeighting(rate));
    }

    /** Frames in one step of 100 ms. */
    public static int stepFrames(SampleRate rate) {
        return rate.framesIn(STEP_SECONDS);
    }

    /** Measures the next frames. */
    public void add(float[] interleaved, int frames) {
        int at = 0;
        for (int frame = 0; frame < frames; frame++) {
            for (KWeighting channel : channels) {
                double weighted = channel.filter(interleaved[at++]);
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
