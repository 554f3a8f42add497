package cuelead.sound;

import cuelead.dsp.BandPass;
import cuelead.time.SampleRate;

/**
 * Music at a gain of which only the band that covers speech goes down under the calls: what the band has too much is taken
 * away from the music, so where nothing dips the music's own samples are left. The band's filter looks a few milliseconds
 * ahead, so music is read so much earlier and kept.
 *
 * <p>For one thread; reading is realtime-safe.
 */
final class BandDip implements MusicReader {
    private static final int CHUNK_FRAMES = 1024;
    private static final long NOWHERE = Long.MIN_VALUE;

    private final MusicReader music;
    private final Dip dip;
    private final double gain;
    private final BandPass band;
    private final int reach;
    private final Channel left;
    private final Channel right;
    private final float[] chunk = new float[CHUNK_FRAMES * Sound.CHANNELS];
    private final float[] gains = new float[CHUNK_FRAMES];
    private long nextFrame = NOWHERE;

    BandDip(MusicReader music, Dip dip, double gain, SampleRate rate) {
        this.music = music;
        this.dip = dip;
        this.gain = gain;
        band = new BandPass(Dipping.BAND_FROM_HZ, Dipping.BAND_TO_HZ, rate);
        reach = BandPass.reachFrames(rate);
        left = new Channel(0);
        right = new Channel(1);
    }

    /** How much later than the frame that is asked for the music must be known. */
    static int aheadFrames(SampleRate rate) {
        return BandPass.reachFrames(rate);
    }

    @Override
    public boolean goOnFrom(MusicReader other, long frame) {
        boolean goesOn = other instanceof BandDip dipped
                && dipped.nextFrame == frame
                && dipped.reach == reach
                && music.goOnFrom(dipped.music, frame + reach);
        if (goesOn) {
            left.set(((BandDip) other).left);
            right.set(((BandDip) other).right);
            nextFrame = frame;
        }
        return goesOn;
    }

    @Override
    public void copy(long fromFrame, float[] interleaved, int frames) {
        if (fromFrame != nextFrame) {
            begin(fromFrame);
        }
        for (int done = 0; done < frames; done += CHUNK_FRAMES) {
            int run = Math.min(CHUNK_FRAMES, frames - done);
            readAhead(fromFrame + done + reach, run);
            dip.gains(gains, run, fromFrame + done, gain);
            left.give(interleaved, done, run);
            right.give(interleaved, done, run);
        }
        nextFrame = fromFrame + frames;
    }

    private void begin(long frame) {
        for (int done = 0; done < 2 * reach; done += CHUNK_FRAMES) {
            readAhead(frame - reach + done, Math.min(CHUNK_FRAMES, 2 * reach - done));
        }
    }

    private void readAhead(long frame, int frames) {
        music.copy(frame, chunk, frames);
        left.take(frames);
        right.take(frames);
    }

    /** The samples around what is given next, and their band. */
    private final class Channel {
        private final int index;
        private final float[] samples = new float[2 * reach + CHUNK_FRAMES];
        private final float[] banded = new float[CHUNK_FRAMES];

        Channel(int index) {
            this.index = index;
        }

        void set(Channel other) {
            System.arraycopy(other.samples, 0, samples, 0, samples.length);
        }

        /** Takes so many new samples from the chunk; the oldest are forgotten. */
        void take(int frames) {
            System.arraycopy(samples, frames, samples, 0, samples.length - frames);
            for (int i = 0; i < frames; i++) {
                samples[samples.length - frames + i] = chunk[Sound.CHANNELS * i + index];
            }
        }

        /** Gives so many samples with their dips. */
        void give(float[] interleaved, int at, int frames) {
            int first = samples.length - reach - frames;
            int from = firstDipped(0, frames, 1);
            int to = firstDipped(frames - 1, -1, -1) + 1;
            if (from < to) {
                band.run(samples, first + from, banded, to - from);
            }
            for (int i = 0; i < frames; i++) {
                float kept = (float) gain * samples[first + i];
                boolean isDipped = i >= from && i < to;
                interleaved[Sound.CHANNELS * (at + i) + index] =
                        isDipped ? kept + (gains[i] - (float) gain) * banded[i - from] : kept;
            }
        }
    }

    /** The first frame on a way at which the music is down, or the way's end. */
    private int firstDipped(int from, int end, int step) {
        int at = from;
        while (at != end && gains[at] == (float) gain) {
            at += step;
        }
        return at;
    }
}
