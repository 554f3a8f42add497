package cuelead.sound;

import cuelead.dsp.stretch.SongSamples;

/** Frames of music at any place; for one thread, and made before it reads. Realtime-safe. */
@FunctionalInterface
public interface MusicReader extends SongSamples {
    /**
     * Goes on without a seam from another reader that has been read up to a frame, where both give the same music around
     * it; elsewhere it begins by itself.
     *
     * @return whether it goes on
     */
    default boolean goOnFrom(MusicReader other, long frame) {
        return false;
    }
}
