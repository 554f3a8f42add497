package cuelead.dsp;

import cuelead.time.SampleRate;
import java.util.Arrays;

/**
 * A stereo look-ahead true-peak limiter after Hämäläinen 2002, "Smoothing of the control signal without clipped
 * output in digital peak limiters" (DAFx-02): the gain that each frame needs, held by a running minimum, then
 * smoothed by an FIR no longer than the look-ahead, so that it is down in time and never too high. The FIR is
 * two running means (a triangle); the minimum is the one of Lemire 2006, "Streaming maximum-minimum filter using
 * no more than three comparisons per element". Both channels share the gain, so the stereo image stays.
 *
 * <p>Gains are whole numbers of 2^-30, so the running means are exact: where nothing near exceeds the ceiling
 * the gain is exactly 1 and samples pass unchanged. The memory is finite ({@link #memoryFrames}), so a limiter
 * started so many frames earlier gives the samples that it would have given had it always run.
 *
 * <p>Not thread-safe. Realtime-safe.
 */
public final class Limiter {
    private static final int CHANNELS = 2;
    private static final double MEAN_SECONDS = 0.010;
    /** Longer than half a period of the lowest bass, whose peaks would else be bent one by one. */
    private static final double HOLD_SECONDS = 0.030;

    private static final int UNITY = 1 << 30;

    private final float ceiling;
    private final int delayFrames;
    private final int memoryFrames;
    private final IntersamplePeaks left = new IntersamplePeaks();
    private final IntersamplePeaks right = new IntersamplePeaks();
    private final float[] peaks = new float[IntersamplePeaks.CHUNK_FRAMES];
    private final RunningMinimum minimum;
    private final RunningSum first;
    private final RunningSum second;
    private final double unitySum;
    private final float[] waiting;
    private int oldest;
    /** After so many frames without a peak every stored gain is 1. */
    private final int settledFrames;

    private long framesSincePeak;

    /** @param ceilingDbtp the peak that is never exceeded, dB true peak */
    public Limiter(SampleRate rate, double ceilingDbtp) {
        ceiling = (float) Math.pow(10, ceilingDbtp / 20);
        int mean = rate.framesIn(MEAN_SECONDS);
        int window = 2 * mean - 1 + rate.framesIn(HOLD_SECONDS);
        delayFrames = IntersamplePeaks.DELAY_FRAMES + 2 * (mean - 1);
        settledFrames = window + 2 * mean;
        framesSincePeak = settledFrames + 1L;
        memoryFrames = window + IntersamplePeaks.DELAY_FRAMES;
        minimum = new RunningMinimum(window);
        first = new RunningSum(mean, UNITY);
        second = new RunningSum(mean, (long) mean * UNITY);
        unitySum = (double) mean * mean * UNITY;
        waiting = new float[delayFrames * CHANNELS];
    }

    /** What comes out is what went in so many frames before. */
    public int delayFrames() {
        return delayFrames;
    }

    /** How far back from a frame the samples lie that its gain can depend on. */
    public int memoryFrames() {
        return memoryFrames;
    }

    /** Limits frames in place; they come out {@link #delayFrames} later. */
    public void process(float[] interleaved, int frames) {
        for (int done = 0; done < frames; ) {
            int run = Math.min(frames - done, peaks.length);
            Arrays.fill(peaks, 0, run, 0);
            left.raise(interleaved, done, run, CHANNELS, 0, ceiling, peaks);
            right.raise(interleaved, done, run, CHANNELS, 1, ceiling, peaks);
            if (isIdle(run)) {
                delay(interleaved, done, run);
            } else {
                limit(interleaved, done, run);
            }
            done += run;
        }
    }

    /** Whether no gain near these frames differs from 1, so that none needs to be worked out. */
    private boolean isIdle(int frames) {
        for (int i = 0; i < frames; i++) {
            if (peaks[i] > ceiling) {
                framesSincePeak = 0;
                return false;
            }
        }
        framesSincePeak += frames;
        return framesSincePeak - frames > settledFrames;
    }

    private void delay(float[] interleaved, int firstFrame, int frames) {
        for (int i = firstFrame; i < firstFrame + frames; i++) {
            exchange(interleaved, i * CHANNELS, 1);
        }
    }

    private void limit(float[] interleaved, int firstFrame, int frames) {
        for (int i = 0; i < frames; i++) {
            exchange(interleaved, (firstFrame + i) * CHANNELS, gainAfter(peaks[i]));
        }
    }

    private float gainAfter(float peak) {
        int needed = peak > ceiling ? (int) (UNITY * ((double) ceiling / peak)) : UNITY;
        return (float) (second.add(first.add(minimum.add(needed))) / unitySum);
    }

    /** Puts the frame that has waited longest, with its gain, in the place of the one that begins to wait. */
    private void exchange(float[] interleaved, int at, float gain) {
        float newLeft = interleaved[at];
        float newRight = interleaved[at + 1];
        interleaved[at] = waiting[oldest] * gain;
        interleaved[at + 1] = waiting[oldest + 1] * gain;
        waiting[oldest] = newLeft;
        waiting[oldest + 1] = newRight;
        oldest += CHANNELS;
        if (oldest == waiting.length) {
            oldest = 0;
        }
    }

    /** Sum of the last so many values; whole numbers, so that nothing is ever rounded. */
    private static final class RunningSum {
        private final long[] values;
        private long sum;
        private int next;

        RunningSum(int length, long before) {
            values = new long[length];
            Arrays.fill(values, before);
            sum = length * before;
        }

        long add(long value) {
            sum += value - values[next];
            values[next] = value;
            if (++next == values.length) {
                next = 0;
            }
            return sum;
        }
    }

    /** Least of the last so many values: a queue in which each value is smaller than all behind it. */
    private static final class RunningMinimum {
        private final int length;
        private final int mask;
        private final int[] values;
        private final long[] times;
        private int head;
        private int size;
        private long now;

        RunningMinimum(int length) {
            this.length = length;
            int capacity = Integer.highestOneBit(length) << 1;
            mask = capacity - 1;
            values = new int[capacity];
            times = new long[capacity];
        }

        int add(int value) {
            while (size > 0 && values[(head + size - 1) & mask] >= value) {
                size--;
            }
            int tail = (head + size) & mask;
            values[tail] = value;
            times[tail] = now;
            size++;
            if (times[head] <= now - length) {
                head = (head + 1) & mask;
                size--;
            }
            now++;
            return values[head];
        }
    }
}
