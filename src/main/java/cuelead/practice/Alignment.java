package cuelead.practice;

import cuelead.sound.ClickAt;
import cuelead.sound.ClickSound;
import cuelead.sound.Levels;
import cuelead.sound.MixPlan;
import cuelead.sound.Speakers;
import cuelead.time.SampleRate;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The same clicks on two devices, so that their delays can be set by ear: when both are heard as one, calls on the
 * second will be heard together with music on the first. Used on one thread.
 */
public final class Alignment {
    /** So slow that a click is never taken for the other device's next one. */
    private static final double CLICK_SECONDS = 1;

    private static final double LENGTH_SECONDS = 3_600;
    /** In an earphone a click is loud. */
    private static final double CLICK_DB = -10;

    private final Outputs outputs;

    /** Begins to play. */
    public Alignment(Speakers main, Speakers calls, Delays delays, SampleRate rate) {
        List<ClickAt> clicks = IntStream.rangeClosed(1, (int) (LENGTH_SECONDS / CLICK_SECONDS))
                .mapToObj(click -> new ClickAt(rate.frameAt(click * CLICK_SECONDS), ClickSound.ACCENTED))
                .toList();
        MixPlan plan = MixPlan.whole(rate, Optional.empty(), List.of(), clicks, new Levels(0, 0, CLICK_DB, 0));
        outputs = Outputs.ofClicks(main, calls, delays, rate);
        outputs.begin(1, plan, 0, Optional.empty());
    }

    public Delays delays() {
        return outputs.delays();
    }

    /** Tries others. */
    public void delays(Delays other) {
        outputs.delays(other);
    }

    /** To be called some times a second: keeps the two devices together. */
    public void tick() {
        outputs.keepTogether();
    }
}
