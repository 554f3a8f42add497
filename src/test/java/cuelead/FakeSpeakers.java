package cuelead;

import cuelead.sound.HeardAt;
import cuelead.sound.Sound;
import cuelead.sound.Speakers;
import cuelead.time.SampleRate;
import java.util.Arrays;
import java.util.Optional;

/** Speakers that play when told, with a queue of 0.2 s before them, and remember what was heard. */
public final class FakeSpeakers implements Speakers {
    private static final double QUEUE_SECONDS = 0.2;
    private static final double BLOCK_SECONDS = 0.02;
    /** Whoever waits for the end looks again so much later. */
    private static final double LOOK_SECONDS = 0.04;

    private final SampleRate rate;
    private final int queueFrames;
    private final int blockFrames;
    private final float[] block;
    private Optional<FakeSpeakers> companion = Optional.empty();
    private Sound sound = (interleaved, frames) -> 0;
    private float[] given = new float[0];
    private int givenFrames;
    private int leftFrames;
    private double owedFrames;
    private boolean isOver = true;
    private boolean isPaused;
    private boolean isLost;
    private boolean isClosed;
    private int dropOuts;
    private float[] heard = new float[0];
    private int heardFrames;

    public FakeSpeakers(SampleRate rate) {
        this.rate = rate;
        queueFrames = rate.framesIn(QUEUE_SECONDS);
        blockFrames = rate.framesIn(BLOCK_SECONDS);
        block = new float[blockFrames * Sound.CHANNELS];
    }

    /** Time that passes here passes there, too. */
    public void hearBeside(FakeSpeakers other) {
        companion = Optional.of(other);
    }

    /** Lets time pass. */
    public void hear(double seconds) {
        companion.ifPresent(other -> other.hear(seconds));
        owedFrames += seconds * rate.hz();
        int frames = (int) Math.round(owedFrames);
        owedFrames -= frames;
        for (int left = frames; left > 0 && !isPaused && !isLost; left -= blockFrames) {
            hearBlock(Math.min(Math.min(left, blockFrames), givenFrames - leftFrames));
        }
    }

    private void hearBlock(int frames) {
        heard = withRoomFor(heard, heardFrames + frames);
        System.arraycopy(given, 2 * leftFrames, heard, 2 * heardFrames, 2 * frames);
        heardFrames += frames;
        leftFrames += frames;
        fill();
    }

    private void fill() {
        while (!isOver && givenFrames - leftFrames < queueFrames) {
            int got = sound.read(block, blockFrames);
            given = withRoomFor(given, givenFrames + got);
            System.arraycopy(block, 0, given, 2 * givenFrames, 2 * got);
            givenFrames += got;
            isOver = got < blockFrames;
        }
    }

    private static float[] withRoomFor(float[] samples, int frames) {
        return 2 * frames <= samples.length ? samples : Arrays.copyOf(samples, 4 * frames);
    }

    /** All that was heard, stereo. */
    public float[] heard() {
        return Arrays.copyOf(heard, 2 * heardFrames);
    }

    /** How much was heard. */
    public int heardFrames() {
        return heardFrames;
    }

    /** The left side of a frame that was heard; 0 before the first. */
    public float heardLeft(int frame) {
        return frame < 0 ? 0 : heard[2 * frame];
    }

    public double heardSeconds() {
        return rate.secondsAt(heardFrames);
    }

    /** The device is gone: time passes, and nothing of the sound does. */
    public void lose() {
        isLost = true;
    }

    /** The device is there again, and goes on with what was not heard. */
    public void comeBack() {
        isLost = false;
    }

    /** Was so often not fed in time. */
    public void breakOff(int times) {
        dropOuts = times;
    }

    @Override
    public void play(Sound next, long startFrame) {
        if (startFrame != 0) {
            throw new IllegalArgumentException("a track that begins at frame " + startFrame);
        }
        sound = next;
        given = new float[0];
        givenFrames = 0;
        leftFrames = 0;
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
        leftFrames = givenFrames;
    }

    @Override
    public long heardFrame() {
        return leftFrames;
    }

    /** All fake speakers are read at one time. */
    @Override
    public HeardAt heardAt() {
        return new HeardAt(leftFrames, 0);
    }

    @Override
    public boolean hasEnded() {
        return isOver && leftFrames == givenFrames;
    }

    @Override
    public boolean awaitEnd(long timeoutMillis) {
        hear(LOOK_SECONDS);
        return hasEnded();
    }

    @Override
    public int dropOuts() {
        return dropOuts;
    }

    @Override
    public boolean isDeviceLost() {
        return isLost;
    }

    @Override
    public void close() {
        isClosed = true;
    }

    public boolean isClosed() {
        return isClosed;
    }
}
