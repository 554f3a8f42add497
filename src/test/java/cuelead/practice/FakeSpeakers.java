package cuelead.practice;

import cuelead.sound.HeardAt;
import cuelead.sound.Sound;
import cuelead.sound.Speakers;
import java.util.Arrays;

/** Speakers that play when told, with a queue of 0.2 s before them, and remember what was heard. */
final class FakeSpeakers implements Speakers {
    static final int QUEUE_FRAMES = HumSong.RATE.framesIn(0.2);
    private static final int BLOCK_FRAMES = HumSong.RATE.framesIn(0.02);

    private final float[] block = new float[2 * BLOCK_FRAMES];
    private Sound sound = (interleaved, frames) -> 0;
    private float[] given = new float[0];
    private int givenFrames;
    private int heardFrames;
    private double owedFrames;
    private boolean isOver;
    private boolean isPaused;
    private float[] heard = new float[0];

    /** Lets time pass. */
    void hear(double seconds) {
        owedFrames += seconds * HumSong.RATE.hz();
        int frames = (int) Math.round(owedFrames);
        owedFrames -= frames;
        for (int left = frames; left > 0 && !isPaused; left -= BLOCK_FRAMES) {
            int now = Math.min(Math.min(left, BLOCK_FRAMES), givenFrames - heardFrames);
            int length = heard.length;
            heard = Arrays.copyOf(heard, length + 2 * now);
            System.arraycopy(given, 2 * heardFrames, heard, length, 2 * now);
            heardFrames += now;
            fill();
        }
    }

    private void fill() {
        while (!isOver && givenFrames - heardFrames < QUEUE_FRAMES) {
            int got = sound.read(block, BLOCK_FRAMES);
            if (2 * (givenFrames + got) > given.length) {
                given = Arrays.copyOf(given, 2 * given.length + 2 * BLOCK_FRAMES);
            }
            System.arraycopy(block, 0, given, 2 * givenFrames, 2 * got);
            givenFrames += got;
            isOver = got < BLOCK_FRAMES;
        }
    }

    /** All that was heard, stereo. */
    float[] heard() {
        return heard;
    }

    double heardSeconds() {
        return HumSong.RATE.secondsAt(heard.length / 2);
    }

    @Override
    public void play(Sound next, long startFrame) {
        sound = next;
        given = new float[0];
        givenFrames = 0;
        heardFrames = 0;
        isOver = false;
        fill();
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
        isOver = true;
        heardFrames = givenFrames;
    }

    @Override
    public long heardFrame() {
        return heardFrames;
    }

    /** All fake speakers are read at one time. */
    @Override
    public HeardAt heardAt() {
        return new HeardAt(heardFrames, 0);
    }

    @Override
    public boolean hasEnded() {
        return isOver && heardFrames == givenFrames;
    }

    @Override
    public boolean awaitEnd(long timeoutMillis) {
        return hasEnded();
    }

    @Override
    public int dropOuts() {
        return 0;
    }

    @Override
    public boolean isDeviceLost() {
        return false;
    }

    @Override
    public void close() {}
}
