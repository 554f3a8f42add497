package cuelead.practice;

import cuelead.sound.Sound;

/** A sound that tells how much of it has been read. */
public final class CountedSound implements Sound {
    private final Sound sound;
    private final long lengthFrames;
    private final String work;
    private final Progress progress;
    private long readFrames;

    public CountedSound(Sound sound, long lengthFrames, String work, Progress progress) {
        this.sound = sound;
        this.lengthFrames = lengthFrames;
        this.work = work;
        this.progress = progress;
    }

    @Override
    public int read(float[] interleaved, int frames) {
        int got = sound.read(interleaved, frames);
        readFrames += got;
        progress.at(work, lengthFrames == 0 ? 1 : (double) readFrames / lengthFrames);
        return got;
    }
}
