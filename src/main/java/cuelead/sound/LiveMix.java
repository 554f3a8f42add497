package cuelead.sound;

import java.util.Optional;
import java.util.Set;

/**
 * A mix that is steered while it sounds. A {@link Change} takes it over to another plan, at the frame that is wanted
 * or, when that has passed, at once; nothing in between is lost or heard twice. Without changes it gives the samples of
 * a {@link Mix}.
 *
 * <p>Read by one thread; changes come from one other. Reading is realtime-safe.
 */
public final class LiveMix implements Sound {
    private final Steered steered;
    private final Sound limited;

    /**
     * A mix that begins inside a plan.
     *
     * @param number     stands for this beginning in the route, as a change's number does for it
     * @param startFrame frame of the song to begin with
     * @param loop       what is repeated
     * @param stems      which parts are heard
     */
    public LiveMix(int number, MixPlan plan, long startFrame, Optional<Change.Loop> loop, Set<StemMix.Stem> stems) {
        steered = new Steered(number, plan, startFrame, loop, stems);
        limited = new Limited(steered, plan.rate(), Mix.CEILING_DBTP, 0);
    }

    @Override
    public int read(float[] interleaved, int frames) {
        return limited.read(interleaved, frames);
    }

    /** Orders a change; one that has been ordered before and not begun is forgotten. */
    public void change(Change change) {
        steered.order(change);
    }

    /** How the frames given lie on the song. */
    public Route route() {
        return steered.route();
    }

    /** The next frame of the song that can still be changed: some milliseconds after the next that is given. */
    public long nextFrame() {
        return steered.nextFrame();
    }
}
