package cuelead.sound;

/** Music at a gain that goes down as a whole under the calls. For one thread; reading is realtime-safe. */
final class WholeDip implements MusicReader {
    private static final int CHUNK_FRAMES = 1024;

    private final MusicReader music;
    private final Dip dip;
    private final double gain;
    private final float[] gains = new float[CHUNK_FRAMES];

    WholeDip(MusicReader music, Dip dip, double gain) {
        this.music = music;
        this.dip = dip;
        this.gain = gain;
    }

    @Override
    public void copy(long fromFrame, float[] interleaved, int frames) {
        music.copy(fromFrame, interleaved, frames);
        for (int done = 0; done < frames; done += CHUNK_FRAMES) {
            int run = Math.min(CHUNK_FRAMES, frames - done);
            dip.gains(gains, run, fromFrame + done, gain);
            for (int i = 0; i < run; i++) {
                interleaved[Sound.CHANNELS * (done + i)] *= gains[i];
                interleaved[Sound.CHANNELS * (done + i) + 1] *= gains[i];
            }
        }
    }

    @Override
    public boolean goOnFrom(MusicReader other, long frame) {
        return other instanceof WholeDip dipped && music.goOnFrom(dipped.music, frame);
    }
}
