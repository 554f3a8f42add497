package cuelead.sound;

/**
 * How music comes in where playing begins: it rises evenly in dB, so that nobody is startled. Calls and clicks have none.
 *
 * @param frames how long it rises; 0 for music that is there at once
 */
public record GentleStart(long frames) {
    public static final GentleStart NONE = new GentleStart(0);
    /** Soft, but so loud that its beat is heard at once. */
    private static final double FROM_DB = -30;

    public GentleStart {
        if (frames < 0) {
            throw new IllegalArgumentException("a start of " + frames + " frames");
        }
    }

    /** Gain of a frame of music, counted from the first that is played. */
    double dbAt(long playedFrame) {
        boolean rises = frames > 0 && playedFrame < frames;
        return rises ? FROM_DB * (frames - Math.max(0, playedFrame)) / frames : 0;
    }

    /**
     * Multiplies stereo frames. Realtime-safe.
     *
     * @param playedFrame how many frames of music were played before the first of them
     */
    void applyTo(float[] interleaved, int count, long playedFrame) {
        int end = (int) Math.max(0, Math.min(count, frames - playedFrame));
        for (int frame = 0; frame < end; frame++) {
            float gain = (float) Decibels.gain(dbAt(playedFrame + frame));
            for (int i = frame * Sound.CHANNELS; i < (frame + 1) * Sound.CHANNELS; i++) {
                interleaved[i] *= gain;
            }
        }
    }
}
