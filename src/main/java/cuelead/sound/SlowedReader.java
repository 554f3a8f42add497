package cuelead.sound;

import cuelead.dsp.stretch.Stretcher;
import cuelead.time.TimeMap;

/**
 * Reads slowed music. Two stretchers take turns, so that two places can be read side by side where one goes over into
 * the other. Frames at the original speed are the song's own; a stretcher that comes there is left once it is back on
 * the map, within {@value #BLEND_SECONDS} s.
 */
final class SlowedReader implements MusicReader {
    private static final double BLEND_SECONDS = 0.05;
    private static final int CHUNK_FRAMES = 1024;

    private final Pcm song;
    private final TimeMap map;
    private final Head[] heads;
    private final int blendFrames;
    private final float[] chunk = new float[CHUNK_FRAMES * Sound.CHANNELS];
    private final float[] original = new float[CHUNK_FRAMES * Sound.CHANNELS];
    private int newestHead;

    /** A stretcher and the frame that it gives next. */
    private static final class Head {
        private static final long NOWHERE = Long.MIN_VALUE;

        private final Stretcher stretcher;
        private long nextFrame = NOWHERE;

        Head(Stretcher stretcher) {
            this.stretcher = stretcher;
        }
    }

    SlowedReader(SlowedMusic music) {
        song = music.song();
        map = music.map();
        heads = new Head[] {head(music), head(music)};
        blendFrames = music.rate().framesIn(BLEND_SECONDS);
    }

    private static Head head(SlowedMusic music) {
        return new Head(new Stretcher(music.song()::copy, music.onsets(), music.rate()));
    }

    @Override
    public boolean goOnFrom(MusicReader other, long frame) {
        if (other instanceof SlowedReader slowed && slowed.song == song && slowed != this) {
            Head its = slowed.heads[slowed.newestHead];
            Head mine = heads[newestHead];
            long ahead = frame + mine.stretcher.aheadFrames();
            if (its.nextFrame == frame && map.isSame(slowed.map, frame) && map.isSame(slowed.map, ahead)) {
                mine.stretcher.set(its.stretcher, map);
                mine.nextFrame = frame;
                return true;
            }
        }
        return false;
    }

    @Override
    public void copy(long fromFrame, float[] interleaved, int frames) {
        for (int done = 0; done < frames; ) {
            int got = read(fromFrame + done, Math.min(CHUNK_FRAMES, frames - done));
            System.arraycopy(chunk, 0, interleaved, done * Sound.CHANNELS, got * Sound.CHANNELS);
            done += got;
        }
    }

    /** Fills the chunk as far as it is read in one way. */
    private int read(long frame, int most) {
        int frames = (int) Math.min(most, map.pieceEnd(frame) - frame);
        if (!map.isOriginalAt(frame)) {
            return stretch(frame, frames, headAt(frame));
        }
        Head head = headFor(frame);
        long settled = map.pieceStart(frame) + head.stretcher.settlingFrames();
        if (head.nextFrame != frame || frame >= settled + blendFrames) {
            song.copy(map.songFrameAt(frame), chunk, frames);
            return frames;
        }
        if (frame < settled) {
            return stretch(frame, (int) Math.min(frames, settled - frame), head);
        }
        int blended = stretch(frame, (int) Math.min(frames, settled + blendFrames - frame), head);
        song.copy(map.songFrameAt(frame), original, blended);
        blend(blended, (int) (frame - settled));
        return blended;
    }

    private int stretch(long frame, int frames, Head head) {
        head.stretcher.read(chunk, frames);
        head.nextFrame = frame + frames;
        return frames;
    }

    private void blend(int frames, int blendedFrames) {
        for (int i = 0; i < frames * Sound.CHANNELS; i++) {
            float share = (blendedFrames + i / Sound.CHANNELS + 0.5f) / blendFrames;
            chunk[i] += share * (original[i] - chunk[i]);
        }
    }

    /** The head that has come to a frame, or the newest. */
    private Head headFor(long frame) {
        Head older = heads[1 - newestHead];
        return older.nextFrame == frame ? older : heads[newestHead];
    }

    private Head headAt(long frame) {
        if (heads[newestHead].nextFrame != frame) {
            newestHead = 1 - newestHead;
            if (heads[newestHead].nextFrame != frame) {
                heads[newestHead].stretcher.begin(map, frame);
            }
        }
        return heads[newestHead];
    }
}
