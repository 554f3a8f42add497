package cuelead.dsp.speech;

import cuelead.dsp.RealFft;
import cuelead.time.SampleRate;
import java.util.Arrays;

/**
 * Logarithmic powers in bands that are equally wide to the ear (mel filters as in Davis and Mermelstein 1980, "Comparison of
 * parametric representations for monosyllabic word recognition", IEEE Trans. Acoust. Speech Signal Proc. 28), 100 frames a
 * second. They are taken against the loud parts of the sound, so that the microphone's gain does not matter.
 */
public final class MelBands {
    /** The only rate that they are made at. */
    public static final SampleRate RATE = new SampleRate(16_000);
    /** From one frame to the next; frame i is centred on second i times this. */
    public static final double STEP_SECONDS = 0.01;

    static final int BANDS = 40;
    private static final int WINDOW = 400;
    private static final int HOP = 160;
    private static final int SIZE = 512;
    private static final double LOW_HZ = 100;
    private static final double HIGH_HZ = 7_600;
    /** The frame power that this part of the frames do not reach counts as loud. */
    private static final double LOUD_PART = 0.97;
    /** Or else what is so much (12 dB) above the quiet fifth of the frames: where nobody speaks, noise is not loud. */
    private static final double OVER_QUIET = Math.pow(10, 1.2);

    private static final int QUIET_FIFTH = 5;
    /** 60 dB below loud all is silence. */
    private static final double FLOOR = 1e-6;

    private static final double NOTHING = 1e-20;
    /** 20 dB are 1, and the middle of what speech takes is about 0. */
    private static final double DB_A_UNIT = 20;

    private static final double MIDDLE = 1.5;

    private MelBands() {}

    /**
     * Of a whole sound.
     *
     * @param samples one channel at {@link #RATE}
     * @return by band, then frame
     */
    public static float[][] of(float[] samples) {
        int frames = 1 + samples.length / HOP;
        float[][] bands = powers(samples, frames);
        double loud = loud(bands, frames) + NOTHING;
        for (float[] band : bands) {
            for (int i = 0; i < frames; i++) {
                band[i] = (float) (10 * Math.log10(band[i] / loud + FLOOR) / DB_A_UNIT + MIDDLE);
            }
        }
        return bands;
    }

    private static float[][] powers(float[] samples, int frames) {
        RealFft fft = new RealFft(SIZE);
        float[] window = new float[WINDOW];
        for (int i = 0; i < WINDOW; i++) {
            window[i] = (float) (0.5 - 0.5 * Math.cos(2 * Math.PI * i / WINDOW));
        }
        double[][] filters = filters(fft.bins());
        float[][] bands = new float[BANDS][frames];
        float[] cut = new float[SIZE];
        float[] magnitudes = new float[fft.bins()];
        for (int frame = 0; frame < frames; frame++) {
            int first = frame * HOP - WINDOW / 2;
            for (int i = 0; i < WINDOW; i++) {
                int at = first + i;
                cut[i] = at >= 0 && at < samples.length ? window[i] * samples[at] : 0;
            }
            fft.magnitudes(cut, magnitudes);
            for (int band = 0; band < BANDS; band++) {
                bands[band][frame] = (float) power(filters[band], magnitudes);
            }
        }
        return bands;
    }

    private static double power(double[] filter, float[] magnitudes) {
        double power = 0;
        for (int bin = 0; bin < filter.length; bin++) {
            power += filter[bin] * magnitudes[bin] * magnitudes[bin];
        }
        return power;
    }

    private static double loud(float[][] bands, int frames) {
        double[] total = new double[frames];
        for (float[] band : bands) {
            for (int i = 0; i < frames; i++) {
                total[i] += band[i];
            }
        }
        Arrays.sort(total);
        double loud = total[(int) (LOUD_PART * (frames - 1))];
        return Math.max(loud, OVER_QUIET * total[(frames - 1) / QUIET_FIFTH]) / BANDS;
    }

    /** Triangles between neighbours that are equally far apart in mel. */
    private static double[][] filters(int bins) {
        double[] edges = new double[BANDS + 2];
        for (int i = 0; i < edges.length; i++) {
            edges[i] = hz(mel(LOW_HZ) + (mel(HIGH_HZ) - mel(LOW_HZ)) * i / (BANDS + 1));
        }
        double[][] filters = new double[BANDS][bins];
        for (int band = 0; band < BANDS; band++) {
            for (int bin = 0; bin < bins; bin++) {
                double at = (double) bin * RATE.hz() / SIZE;
                double rise = (at - edges[band]) / (edges[band + 1] - edges[band]);
                double fall = (edges[band + 2] - at) / (edges[band + 2] - edges[band + 1]);
                filters[band][bin] = Math.max(0, Math.min(rise, fall));
            }
        }
        return filters;
    }

    private static double mel(double hz) {
        return 2_595 * Math.log10(1 + hz / 700);
    }

    private static double hz(double mel) {
        return 700 * (Math.pow(10, mel / 2_595) - 1);
    }
}
