package cuelead.sound;

import cuelead.dsp.stretch.SongSamples;

/** Samples from frame 0 on, as a sound. As realtime-safe as they are. */
final class Whole implements Sound {
    private final SongSamples samples;
    private final long lengthFrames;
    private long nextFrame;

    Whole(SongSamples samples, long lengthFrames) {
        this.samples = samples;
        this.lengthFrames = lengthFrames;
    }

    @Override
    public int read(float[] interleaved, int frames) {
        int wanted = (int) Math.min(frames, lengthFrames - nextFrame);
        samples.copy(nextFrame, interleaved, wanted);
        nextFrame += wanted;
        return wanted;
    }
}
