package cuelead.cli;

import cuelead.sound.Sound;
import cuelead.sound.Speakers;
import cuelead.time.SampleRate;

/** Speakers without a device or a clock: each look at them is 40 ms later. */
final class FakeSpeakers implements Speakers {
    private final float[] block;
    private final int framesALook;
    private Sound sound = (interleaved, frames) -> 0;
    private long heardFrame;
    private boolean hasEnded = true;
    private boolean isPaused;
    private boolean isClosed;

    FakeSpeakers(SampleRate rate) {
        framesALook = rate.framesIn(0.04);
        block = new float[framesALook * Sound.CHANNELS];
    }

    @Override
    public void play(Sound next, long startFrame) {
        sound = next;
        heardFrame = startFrame;
        hasEnded = false;
    }

    @Override
    public void pause() {
        isPaused = true;
    }

    @Override
    public void resume() {
        isPaused = false;
    }

    @Override
    public void stop() {
        hasEnded = true;
    }

    @Override
    public long heardFrame() {
        return heardFrame;
    }

    @Override
    public boolean hasEnded() {
        return hasEnded;
    }

    @Override
    public boolean awaitEnd(long timeoutMillis) {
        if (!isPaused && !hasEnded) {
            int got = sound.read(block, framesALook);
            heardFrame += got;
            hasEnded = got < framesALook;
        }
        return hasEnded;
    }

    @Override
    public int dropOuts() {
        return 2;
    }

    @Override
    public boolean isDeviceLost() {
        return false;
    }

    @Override
    public void close() {
        isClosed = true;
    }

    boolean isClosed() {
        return isClosed;
    }
}
