package cuelead.output;

import cuelead.sound.Sound;

/** A sound on its way to the speakers. Its progress is written by the audio thread and may be read by any. */
final class Track {
    private final Sound sound;
    private final long startFrame;
    private volatile long heardFrame;
    private volatile boolean ended;

    /** @param startFrame what the first frame of the sound is called: progress is counted from there */
    Track(Sound sound, long startFrame) {
        this.sound = sound;
        this.startFrame = startFrame;
        heardFrame = startFrame;
    }

    int read(float[] interleaved, int frames) {
        return sound.read(interleaved, frames);
    }

    void heard(long framesOfSound) {
        heardFrame = startFrame + framesOfSound;
    }

    void end() {
        ended = true;
    }

    long heardFrame() {
        return heardFrame;
    }

    boolean hasEnded() {
        return ended;
    }
}
