package cuelead.compose;

import cuelead.time.SampleRate;

/**
 * Keeps every sample under a ceiling without distorting: the gain falls ahead of a peak and rises slowly behind it
 * (the least allowed gain over a window, smoothed by a mean over the same window, as in G. W. McNally, "Dynamic
 * range control of digital audio signals", Journal of the Audio Engineering Society 32, 1984, with look-ahead).
 */
final class Limiter {
    private static final double AHEAD_SECONDS = 0.004;
    private static final double RELEASE_SECONDS = 0.08;

    private final int ahead;
    private final float ceiling;
    private final double release;

    Limiter(SampleRate rate, float ceiling) {
        this.ahead = rate.framesIn(AHEAD_SECONDS);
        this.ceiling = ceiling;
        this.release = 1 - Math.exp(-1 / (RELEASE_SECONDS * rate.hz()));
    }

    /** The limited copy of an interleaved stereo sound; nothing is delayed. */
    float[] limit(float[] stereo) {
        double[] least = leastAhead(allowedGain(stereo));
        double[] gain = smoothed(released(least));
        float[] limited = new float[stereo.length];
        for (int i = 0; i < stereo.length; i++) {
            limited[i] = (float) (stereo[i] * gain[i / 2]);
        }
        return limited;
    }

    private double[] allowedGain(float[] stereo) {
        double[] allowed = new double[stereo.length / 2];
        for (int i = 0; i < allowed.length; i++) {
            float peak = Math.max(Math.abs(stereo[2 * i]), Math.abs(stereo[2 * i + 1]));
            allowed[i] = peak > ceiling ? ceiling / peak : 1;
        }
        return allowed;
    }

    /** The least gain from each frame to {@code ahead} frames on. */
    private double[] leastAhead(double[] allowed) {
        double[] least = allowed.clone();
        for (int i = 0; i < allowed.length; i++) {
            if (allowed[i] < 1) {
                for (int k = Math.max(0, i - ahead); k < i; k++) {
                    least[k] = Math.min(least[k], allowed[i]);
                }
            }
        }
        return least;
    }

    private double[] released(double[] least) {
        double[] gain = new double[least.length];
        double now = 1;
        for (int i = 0; i < least.length; i++) {
            now = Math.min(least[i], now + (1 - now) * release);
            gain[i] = now;
        }
        return gain;
    }

    /** The mean over the last {@code ahead} frames: it has come down when the peak arrives. */
    private double[] smoothed(double[] gain) {
        double[] smooth = new double[gain.length];
        double sum = ahead;
        for (int i = 0; i < gain.length; i++) {
            sum += gain[i] - (i >= ahead ? gain[i - ahead] : 1);
            smooth[i] = Math.min(1, sum / ahead);
        }
        return smooth;
    }
}
