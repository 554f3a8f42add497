package cuelead.dsp;

import cuelead.time.SampleRate;
import java.util.Arrays;

/**
 * What lies between two frequencies, without any delay between the parts of a sound: a symmetric windowed sinc
 * (Oppenheim and Schafer, "Discrete-time signal processing", section 7.5, with the window of {@link Kaiser}). So the band
 * taken away from the sound leaves the rest as it is, and half of the band taken away leaves half of it. At either
 * frequency half of the amplitude is let through; {@value #SLOPE_HZ} Hz lie between all and nothing.
 *
 * <p>Immutable. {@link #run} is realtime-safe.
 */
public final class BandPass {
    private static final double SLOPE_HZ = 300;
    private static final double STOP_DB = 50;
    /** Kaiser 1974: the shape of the window for so much attenuation, 21 to 50 dB. */
    private static final double BETA = 0.5842 * Math.pow(STOP_DB - 21, 0.4) + 0.07886 * (STOP_DB - 21);

    /** From the middle outwards; the other half is its mirror image. */
    private final float[] taps;

    /** @param toHz where it ends; beyond half the rate it is open upwards */
    public BandPass(double fromHz, double toHz, SampleRate rate) {
        double top = Math.min(toHz, rate.hz() / 2.0);
        taps = new float[reachFrames(rate) + 1];
        for (int i = 0; i < taps.length; i++) {
            double ideal = lowPassTap(top, i, rate) - lowPassTap(fromHz, i, rate);
            taps[i] = (float) (ideal * Kaiser.window((double) i / taps.length, BETA));
        }
    }

    private static double lowPassTap(double hz, int frame, SampleRate rate) {
        double width = 2 * hz / rate.hz();
        return frame == 0 ? width : Math.sin(Math.PI * width * frame) / (Math.PI * frame);
    }

    /** How many frames before and behind a frame it depends on. */
    public static int reachFrames(SampleRate rate) {
        // half of Kaiser's length for the slope
        return (int) Math.ceil((STOP_DB - 8) / (2.285 * 2 * Math.PI * SLOPE_HZ / rate.hz()) / 2);
    }

    /**
     * Takes out the band of some frames.
     *
     * @param samples one channel
     * @param from    the first of the frames; {@link #reachFrames} samples stand before it and behind the last
     * @param band    the band of the frames is written here, from its beginning
     */
    public void run(float[] samples, int from, float[] band, int frames) {
        Arrays.fill(band, 0, frames, 0);
        addTap(samples, from, from, 0.5f * taps[0], band, frames);
        for (int i = 1; i < taps.length; i++) {
            addTap(samples, from - i, from + i, taps[i], band, frames);
        }
    }

    /** A plain loop over neighbours, which the virtual machine makes several of at once. */
    private static void addTap(float[] samples, int before, int behind, float tap, float[] band, int frames) {
        for (int i = 0; i < frames; i++) {
            band[i] += tap * (samples[before + i] + samples[behind + i]);
        }
    }
}
