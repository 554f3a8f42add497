package cuelead.sound;

import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicReference;

/**
 * The sum of a {@link LiveMix}, before its limiter: legs one after the other, each going over into the next within a
 * few milliseconds, in which both sound. Where they are equal, the going over is not heard.
 *
 * <p>Read by one thread; {@link #order} and what is asked may be called by another. Reading is realtime-safe.
 */
final class Steered implements Sound {
    private static final double FADE_SECONDS = 0.010;
    private static final int CHUNK_FRAMES = 1024;

    private final Set<StemMix.Stem> stems;
    private final int fadeFrames;
    private final float[] coming = new float[CHUNK_FRAMES * CHANNELS];
    private final float[] going = new float[CHUNK_FRAMES * CHANNELS];
    private final AtomicReference<Order> orders = new AtomicReference<>();
    private final Route route = new Route();

    private Leg leg;
    private Leg goingLeg;
    private long goingFrame;
    private int fadedFrames;
    private Order waiting;
    private long waitingFrame;
    private long givenFrames;
    private long playedFrames;
    private long nextFrame;
    private volatile long toldNextFrame;

    /** A change, with its leg already made. */
    private record Order(Change change, Leg leg) {}

    Steered(int number, MixPlan plan, long startFrame, Optional<Change.Loop> loop, Set<StemMix.Stem> stems) {
        this.stems = stems;
        fadeFrames = plan.rate().framesIn(FADE_SECONDS);
        leg = new Leg(number, plan, stems, loop);
        goingLeg = leg;
        fadedFrames = fadeFrames;
        nextFrame = startFrame;
        toldNextFrame = startFrame;
        route.add(0, startFrame, number);
    }

    /** Takes the place of an order that has not been followed yet. */
    void order(Change change) {
        orders.set(new Order(change, new Leg(change.number(), change.plan(), stems, change.loop())));
    }

    Route route() {
        return route;
    }

    long nextFrame() {
        return toldNextFrame;
    }

    @Override
    public int read(float[] interleaved, int frames) {
        Order order = orders.getAndSet(null);
        if (order != null) {
            waiting = order;
            waitingFrame = order.change.atFrame();
        }
        int done = 0;
        boolean hasEnded = false;
        while (done < frames && !hasEnded) {
            turn();
            int wanted = Math.min(frames - done, framesToTurn());
            int got = readStretch(wanted);
            System.arraycopy(coming, 0, interleaved, done * CHANNELS, got * CHANNELS);
            done += got;
            hasEnded = got < wanted;
        }
        toldNextFrame = nextFrame;
        return done;
    }

    /** Goes over to what is due; never within a going over. */
    private void turn() {
        if (fadedFrames < fadeFrames) {
            return;
        }
        if (waiting != null && nextFrame >= waitingFrame) {
            long late = nextFrame - waitingFrame;
            goOver(waiting.leg, waiting.change.toFrame() + late);
            waiting = null;
        } else if (nextFrame >= leg.loopEndFrame()) {
            long back = leg.loopEndFrame() - leg.loopFromFrame();
            goOver(leg, nextFrame - back);
            waitingFrame -= back;
        }
    }

    private void goOver(Leg next, long frame) {
        if (frame == nextFrame) {
            next.goOnFrom(leg, frame);
        }
        if (next.hasMusic() && !leg.hasMusic()) {
            playedFrames = 0;
        }
        goingLeg = leg;
        goingFrame = nextFrame;
        fadedFrames = 0;
        leg = next;
        nextFrame = frame;
        route.add(givenFrames, frame, next.change());
    }

    private int framesToTurn() {
        if (fadedFrames < fadeFrames) {
            return Math.min(CHUNK_FRAMES, fadeFrames - fadedFrames);
        }
        long left = Math.min(CHUNK_FRAMES, leg.loopEndFrame() - nextFrame);
        if (waiting != null) {
            left = Math.min(left, waitingFrame - nextFrame);
        }
        return (int) left;
    }

    private int readStretch(int frames) {
        int got = leg.read(nextFrame, coming, frames, playedFrames());
        if (fadedFrames < fadeFrames) {
            blend(got);
        }
        nextFrame += got;
        givenFrames += got;
        playedFrames += Math.max(0, Math.min(got, nextFrame));
        return got;
    }

    /** Of music, wherever the changes led: it comes in gently where it begins from silence. Below 0 before the song. */
    private long playedFrames() {
        return playedFrames == 0 ? Math.min(0, nextFrame) : playedFrames;
    }

    /** Straight from the old to the new; equal samples stay exactly what they are. */
    private void blend(int frames) {
        int left = goingLeg.read(goingFrame, going, frames, playedFrames());
        Arrays.fill(going, left * CHANNELS, frames * CHANNELS, 0);
        for (int frame = 0; frame < frames; frame++) {
            float share = (fadedFrames + frame + 0.5f) / fadeFrames;
            for (int i = frame * CHANNELS; i < (frame + 1) * CHANNELS; i++) {
                coming[i] = going[i] + share * (coming[i] - going[i]);
            }
        }
        goingFrame += frames;
        fadedFrames += frames;
    }
}
