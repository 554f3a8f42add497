package cuelead.dsp;

import cuelead.time.SampleRate;

/**
 * Band-limited resampling by a rational ratio: a windowed-sinc low-pass in polyphase form (Smith and Gossett
 * 1984, "A flexible sampling-rate conversion method"), with a Kaiser window (Kaiser 1974; beta from the wanted
 * stop-band by the formula of Oppenheim and Schafer, "Discrete-time signal processing", section 7.5). Zero
 * phase: output frame n is the input at time n / outputRate exactly, without delay.
 *
 * <p>Stop-band 100 dB; pass-band to 0.91 of the lower Nyquist frequency. Immutable; safe on any thread.
 */
public final class Resampler {
    private static final double STOP_BAND_DB = 100;
    private static final double ROLL_OFF = 0.955;
    private static final double TRANSITION = 0.09;

    private final int up;
    private final int down;
    /** phases[p][t] weighs the input frame (centre - half + 1 + t) for output phase p. */
    private final float[][] phases;

    private final int half;

    public Resampler(SampleRate from, SampleRate to) {
        int divisor = gcd(from.hz(), to.hz());
        up = to.hz() / divisor;
        down = from.hz() / divisor;
        double cutoff = Math.min(1, (double) to.hz() / from.hz());
        double beta = 0.1102 * (STOP_BAND_DB - 8.7);
        double taps = (STOP_BAND_DB - 7.95) / (2.285 * Math.PI * TRANSITION * cutoff);
        half = (int) Math.ceil(taps / 2);
        phases = new float[up][2 * half];
        for (int p = 0; p < up; p++) {
            double fraction = (double) p / up;
            double sum = 0;
            double[] row = new double[2 * half];
            for (int t = 0; t < 2 * half; t++) {
                double x = t - half + 1 - fraction;
                row[t] = sinc(x * cutoff * ROLL_OFF) * Kaiser.window(x / half, beta);
                sum += row[t];
            }
            for (int t = 0; t < 2 * half; t++) {
                phases[p][t] = (float) (row[t] / sum);
            }
        }
    }

    /** How many input frames on either side of its own time one output frame depends on. */
    public int reachFrames() {
        return half;
    }

    /** Number of output frames for so many input frames: every output time that lies inside the input. */
    public long framesOut(long framesIn) {
        return (framesIn * up + down - 1) / down;
    }

    /** The input frame at or before an output frame. */
    public long inputFrameOf(long outputFrame) {
        return Math.floorDiv(outputFrame * down, up);
    }

    /**
     * One output sample of one channel.
     *
     * @param input        interleaved samples
     * @param channels     number of channels in it
     * @param channel      which one
     * @param firstFrame   the frame of the whole input that {@code input[0]} belongs to
     * @param frames       how many frames it holds; those beyond either end count as silence
     * @param outputFrame  which output frame
     */
    public float sample(float[] input, int channels, int channel, long firstFrame, int frames, long outputFrame) {
        long at = outputFrame * down;
        float[] row = phases[(int) Math.floorMod(at, (long) up)];
        long from = Math.floorDiv(at, up) - half + 1 - firstFrame;
        int first = (int) Math.max(0, -from);
        int last = (int) Math.min(row.length, frames - from);
        double sum = 0;
        for (int t = first; t < last; t++) {
            sum += row[t] * input[(int) (from + t) * channels + channel];
        }
        return (float) sum;
    }

    /**
     * A run of output frames of a stereo sound.
     *
     * @param input       interleaved stereo
     * @param firstFrame  the frame of the whole input that {@code input[0]} belongs to
     * @param frames      how many frames it holds; those beyond either end count as silence
     * @param output      interleaved stereo, overwritten from its front
     * @param firstOutput the frame of the whole output that {@code output[0]} belongs to
     */
    public void stereo(float[] input, long firstFrame, int frames, float[] output, int outputFrames, long firstOutput) {
        for (int i = 0; i < outputFrames; i++) {
            long at = (firstOutput + i) * down;
            float[] row = phases[(int) Math.floorMod(at, (long) up)];
            int from = (int) (Math.floorDiv(at, up) - half + 1 - firstFrame);
            int first = Math.max(0, -from);
            int last = Math.min(row.length, frames - from);
            stereoFrame(row, first, last, input, 2 * (from + first), output, 2 * i);
        }
    }

    /** Four sums at a time, so that the additions need not wait for each other. */
    private static void stereoFrame(
            float[] row, int first, int last, float[] input, int inputAt, float[] output, int outputAt) {
        float left = 0;
        float right = 0;
        float leftToo = 0;
        float rightToo = 0;
        int in = inputAt;
        int t = first;
        for (; t + 1 < last; t += 2) {
            left += row[t] * input[in];
            right += row[t] * input[in + 1];
            leftToo += row[t + 1] * input[in + 2];
            rightToo += row[t + 1] * input[in + 3];
            in += 4;
        }
        if (t < last) {
            left += row[t] * input[in];
            right += row[t] * input[in + 1];
        }
        output[outputAt] = left + leftToo;
        output[outputAt + 1] = right + rightToo;
    }

    /**
     * A run of output frames of a mono sound.
     *
     * @param input       its samples
     * @param firstFrame  the frame of the whole input that {@code input[0]} belongs to
     * @param frames      how many frames it holds; those beyond either end count as silence
     * @param output      overwritten from its front
     * @param firstOutput the frame of the whole output that {@code output[0]} belongs to
     */
    public void mono(float[] input, long firstFrame, int frames, float[] output, int outputFrames, long firstOutput) {
        for (int i = 0; i < outputFrames; i++) {
            long at = (firstOutput + i) * down;
            float[] row = phases[(int) Math.floorMod(at, (long) up)];
            int from = (int) (Math.floorDiv(at, up) - half + 1 - firstFrame);
            int first = Math.max(0, -from);
            int last = Math.min(row.length, frames - from);
            output[i] = monoFrame(row, first, last, input, from);
        }
    }

    /** Four sums at a time, as in {@link #stereoFrame}. */
    private static float monoFrame(float[] row, int first, int last, float[] input, int from) {
        float a = 0;
        float b = 0;
        float c = 0;
        float d = 0;
        int t = first;
        for (; t + 3 < last; t += 4) {
            a += row[t] * input[from + t];
            b += row[t + 1] * input[from + t + 1];
            c += row[t + 2] * input[from + t + 2];
            d += row[t + 3] * input[from + t + 3];
        }
        for (; t < last; t++) {
            a += row[t] * input[from + t];
        }
        return a + b + (c + d);
    }

    /** A whole mono sound at another rate. */
    public static float[] convert(float[] mono, SampleRate from, SampleRate to) {
        if (from.equals(to)) {
            return mono.clone();
        }
        Resampler resampler = new Resampler(from, to);
        float[] out = new float[Math.toIntExact(resampler.framesOut(mono.length))];
        for (int i = 0; i < out.length; i++) {
            out[i] = resampler.sample(mono, 1, 0, 0, mono.length, i);
        }
        return out;
    }

    private static double sinc(double x) {
        return x == 0 ? 1 : Math.sin(Math.PI * x) / (Math.PI * x);
    }

    private static int gcd(int a, int b) {
        return b == 0 ? a : gcd(b, a % b);
    }
}
