package cuelead.time;

/** Frames a second (a frame is one instant, all channels); 4,000 to 384,000. */
public record SampleRate(int hz) {
    public SampleRate {
        if (hz < 4_000 || hz > 384_000) {
            throw new IllegalArgumentException("sample rate out of range [4000, 384000] Hz: " + hz);
        }
    }

    /** The frame nearest to a time in seconds. */
    public long frameAt(double seconds) {
        return Math.round(seconds * hz);
    }

    public double secondsAt(long frame) {
        return (double) frame / hz;
    }

    /** A length in seconds as a whole number of frames, rounded to the nearest. */
    public int framesIn(double seconds) {
        return Math.toIntExact(Math.round(seconds * hz));
    }
}
