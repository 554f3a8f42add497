package cuelead.sound;

import java.util.Optional;
import java.util.Set;

/** One plan on the way of a {@link LiveMix}, read at any frame. Belongs to one thread; reading is realtime-safe. */
final class Leg {
    /** So far away that frames before the song can be taken from it without overflow. */
    private static final long NEVER = Long.MAX_VALUE / 2;

    private final int change;
    private final StemMix mix;
    private final long loopFromFrame;
    private final long loopEndFrame;

    Leg(int change, MixPlan plan, Set<StemMix.Stem> stems, Optional<Change.Loop> loop) {
        this.change = change;
        mix = new StemMix(plan, stems);
        loopFromFrame = loop.map(Change.Loop::fromFrame).orElse(NEVER);
        loopEndFrame = loop.map(Change.Loop::endFrame).orElse(NEVER);
    }

    /** Number of the change that led to it. */
    int change() {
        return change;
    }

    boolean hasMusic() {
        return mix.hasMusic();
    }

    /** The frame at which it goes back; after every frame when it does not. */
    long loopEndFrame() {
        return loopEndFrame;
    }

    long loopFromFrame() {
        return loopFromFrame;
    }

    /** Goes on where another leg has been read up to a frame. */
    void goOnFrom(Leg other, long frame) {
        mix.goOnFrom(other.mix, frame);
    }

    /**
     * What sounds from a frame of the song on; otherwise as {@link Sound#read}.
     *
     * @param playedFrames how many frames of music were played before
     */
    int read(long frame, float[] interleaved, int frames, long playedFrames) {
        mix.seek(frame);
        return mix.read(interleaved, frames, playedFrames);
    }
}
