package cuelead.dsp.beat;

import cuelead.dsp.RealFft;
import cuelead.time.SampleRate;
import java.util.Arrays;

/**
 * A song's magnitudes in bands of a semitone, 50 frames a second: what is heard of it. Frame i is centred on sample
 * 441 i of the song at 22,050 Hz (window: 1024 samples, Hann; outside the song there is silence).
 *
 * <p>Filled from the front by {@link #add}, then {@link #finish}ed; not thread-safe.
 */
public final class BandSpectrum {
    public static final SampleRate RATE = new SampleRate(22_050);
    public static final int FRAMES_PER_SECOND = 50;
    static final int HOP_SAMPLES = 441;
    static final int WINDOW_SAMPLES = 1024;
    /** Keeps the logarithm of silence finite. */
    private static final float FLOOR = 1e-5f;

    private static final double LOUDNESS_GAIN = 10;
    private static final FilterBank FILTERS = new FilterBank(WINDOW_SAMPLES, RATE.hz());

    private final float[] hann = hann();
    private final RealFft fft = new RealFft(WINDOW_SAMPLES);
    private final float[] magnitudes = new float[fft.bins()];
    private final float[] windowed = new float[WINDOW_SAMPLES];
    /** The samples from the next frame's beginning on. */
    private final float[] pending = new float[WINDOW_SAMPLES];

    private int pendingSamples = WINDOW_SAMPLES / 2;
    private long samples;
    private int frames;
    private float[][] bands = new float[FILTERS.bands()][1024];

    private static float[] hann() {
        float[] window = new float[WINDOW_SAMPLES];
        for (int i = 0; i < WINDOW_SAMPLES; i++) {
            window[i] = (float) (0.5 - 0.5 * Math.cos(2 * Math.PI * i / WINDOW_SAMPLES));
        }
        return window;
    }

    /** A whole sound at {@link #RATE}. */
    public static BandSpectrum of(float[] mono) {
        BandSpectrum spectrum = new BandSpectrum();
        spectrum.add(mono, mono.length);
        spectrum.finish();
        return spectrum;
    }

    /** The next samples at {@link #RATE}. */
    public void add(float[] mono, int count) {
        int done = 0;
        while (done < count) {
            int run = Math.min(count - done, WINDOW_SAMPLES - pendingSamples);
            System.arraycopy(mono, done, pending, pendingSamples, run);
            pendingSamples += run;
            done += run;
            if (pendingSamples == WINDOW_SAMPLES) {
                endFrame();
            }
        }
        samples += count;
    }

    /** Says that nothing more comes: the last frames see silence behind the song. */
    public void finish() {
        int wanted = (int) (samples / HOP_SAMPLES) + 1;
        while (frames < wanted) {
            Arrays.fill(pending, pendingSamples, WINDOW_SAMPLES, 0);
            endFrame();
        }
        for (int band = 0; band < bands.length; band++) {
            bands[band] = Arrays.copyOf(bands[band], frames);
        }
    }

    private void endFrame() {
        for (int i = 0; i < WINDOW_SAMPLES; i++) {
            windowed[i] = pending[i] * hann[i];
        }
        fft.magnitudes(windowed, magnitudes);
        if (frames == bands[0].length) {
            for (int band = 0; band < bands.length; band++) {
                bands[band] = Arrays.copyOf(bands[band], 2 * frames);
            }
        }
        for (int band = 0; band < bands.length; band++) {
            bands[band][frames] = FILTERS.band(band, magnitudes) + FLOOR;
        }
        frames++;
        pendingSamples = Math.max(0, pendingSamples - HOP_SAMPLES);
        System.arraycopy(pending, HOP_SAMPLES, pending, 0, pendingSamples);
    }

    public int frames() {
        return frames;
    }

    public int bands() {
        return bands.length;
    }

    /** Magnitudes of one band over time; the caller's to read, not to change. */
    float[] band(int band) {
        return bands[band];
    }

    /** Mean magnitude of all bands and frames. */
    double mean() {
        double sum = 0;
        for (float[] band : bands) {
            for (int i = 0; i < frames; i++) {
                sum += band[i];
            }
        }
        return sum / ((double) bands.length * frames);
    }

    /** Of the whole song as it is compared from beat to beat; by band, then frame. */
    float[][] loudness() {
        return compressed(LOUDNESS_GAIN, 0, frames);
    }

    /**
     * The magnitudes as loudness is felt, whatever the song's level: ln(1 + gain * magnitude / mean of the song).
     *
     * @param fromFrame the first frame wanted; frames outside the song are 0
     * @return by band, then frame
     */
    float[][] compressed(double gain, int fromFrame, int frameCount) {
        float factor = (float) (gain / mean());
        float[][] out = new float[bands.length][frameCount];
        int first = Math.max(0, -fromFrame);
        int last = Math.min(frameCount, frames - fromFrame);
        for (int band = 0; band < bands.length; band++) {
            for (int i = first; i < last; i++) {
                out[band][i] = (float) Math.log1p(factor * bands[band][fromFrame + i]);
            }
        }
        return out;
    }
}
