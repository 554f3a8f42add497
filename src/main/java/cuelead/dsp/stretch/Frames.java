package cuelead.dsp.stretch;

import cuelead.time.SampleRate;

/** Lengths of windows, as powers of two near the same milliseconds at every sample rate, and their shape. */
final class Frames {
    private static final double VOCODER_SECONDS = 0.093;

    private Frames() {}

    /** The vocoder's window: 93 ms, 4096 frames at 44.1 and 48 kHz. The others are parts of it. */
    static int vocoderWindow(SampleRate rate) {
        return 1 << (int) Math.round(Math.log(rate.hz() * VOCODER_SECONDS) / Math.log(2));
    }

    /** Hann, periodic. */
    static float[] hann(int length) {
        float[] window = new float[length];
        for (int i = 0; i < length; i++) {
            window[i] = (float) (0.5 - 0.5 * Math.cos(2 * Math.PI * i / length));
        }
        return window;
    }
}
