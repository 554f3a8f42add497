package cuelead.sound;

import cuelead.dsp.stretch.SongSamples;
import cuelead.dsp.stretch.Stretcher;
import cuelead.time.TimeMap;

/**
 * Reads slowed music. Two stretchers take turns, so that two places can be read side by side where one goes over into
 * the other. Frames at the original speed are the song's own. One thread; reading is realtime-safe.
 */
final class SlowedReader implements SongSamples {
    private final Pcm song;
    private final TimeMap map;
    private final Head[] heads;
    private int lastHead;

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
    }

    private static Head head(SlowedMusic music) {
        return new Head(new Stretcher(music.song()::copy, music.onsets(), music.rate()));
    }

    @Override
    public void copy(long fromFrame, float[] interleaved, int frames) {
        if (map.isOriginalAt(fromFrame) && map.isOriginalAt(fromFrame + frames - 1)) {
            song.copy(map.songFrameAt(fromFrame), interleaved, frames);
            return;
        }
        Head head = headAt(fromFrame);
        head.stretcher.read(interleaved, frames);
        head.nextFrame = fromFrame + frames;
    }

    private Head headAt(long frame) {
        for (int i = 0; i < heads.length; i++) {
            if (heads[i].nextFrame == frame) {
                lastHead = i;
                return heads[i];
            }
        }
        lastHead = 1 - lastHead;
        heads[lastHead].stretcher.begin(map, frame);
        return heads[lastHead];
    }
}
