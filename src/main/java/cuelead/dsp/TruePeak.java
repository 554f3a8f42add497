package cuelead.dsp;

import java.util.Arrays;

/**
 * The true peak of Recommendation ITU-R BS.1770-4, annex 2: the highest point of the waveform between the
 * samples as well as on them, by four-fold over-sampling. Works at any rate, for it knows only frames.
 *
 * <p>Not thread-safe. Realtime-safe.
 */
public final class TruePeak {
    private final int channelCount;
    private final IntersamplePeaks[] channels;
    private final float[] peaks = new float[IntersamplePeaks.CHUNK_FRAMES];
    private final float[] silence;
    private float highest;

    public TruePeak(int channelCount) {
        this.channelCount = channelCount;
        channels = new IntersamplePeaks[channelCount];
        Arrays.setAll(channels, channel -> new IntersamplePeaks());
        silence = new float[IntersamplePeaks.DELAY_FRAMES * channelCount];
    }

    /** Measures the next frames; the last few count only when more follow or {@link #finish} is called. */
    public void add(float[] interleaved, int frames) {
        for (int done = 0; done < frames; ) {
            int run = Math.min(frames - done, peaks.length);
            Arrays.fill(peaks, 0);
            for (int channel = 0; channel < channelCount; channel++) {
                channels[channel].raise(interleaved, done, run, channelCount, channel, highest, peaks);
            }
            for (int i = 0; i < run; i++) {
                highest = Math.max(highest, peaks[i]);
            }
            done += run;
        }
    }

    /** Says that silence follows, so that the last frames are measured too. */
    public void finish() {
        add(silence, IntersamplePeaks.DELAY_FRAMES);
    }

    /** The highest peak so far in dB true peak; negative infinity for silence. */
    public double dbtp() {
        return 20 * Math.log10(highest);
    }
}
