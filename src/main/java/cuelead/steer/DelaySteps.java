package cuelead.steer;

import cuelead.practice.CallsGo;
import cuelead.practice.Delays;
import java.util.function.Consumer;

/** How much later things are heard, moved in small steps while they play. Used on one thread. */
public final class DelaySteps {
    private static final double EAR_STEP_SECONDS = 0.005;
    private static final double DISPLAY_STEP_SECONDS = 0.010;

    private final CallsGo callsGo;
    private final Delays atFirst;
    private final Consumer<Delays> change;
    private Delays now;

    /**
     * From the delays at first.
     *
     * @param callsGo where the calls were wished: on a device of their own they move, else the display does
     * @param change  what each step is told to
     */
    DelaySteps(CallsGo callsGo, Delays atFirst, Consumer<Delays> change) {
        this.callsGo = callsGo;
        this.atFirst = atFirst;
        this.change = change;
        now = atFirst;
    }

    Delays now() {
        return now;
    }

    /**
     * Moves them; calls in the ear that shall sound sooner are on a device that is later.
     *
     * @param steps below 0 = later
     * @return what was done
     */
    String sooner(int steps) {
        Delays before = now;
        now = callsGo == CallsGo.APART
                ? atFirst.withCallsApartBy(now.apartSeconds() + steps * EAR_STEP_SECONDS)
                : now.withMusicLaterBy(-steps * DISPLAY_STEP_SECONDS);
        change.accept(now);
        String where = steps > 0 ? "sooner" : "later";
        String what = callsGo == CallsGo.APART ? "The calls in your ear " : "The display ";
        String comes = callsGo == CallsGo.APART ? "come " : "comes ";
        return what + (now.equals(before) ? "cannot come " : comes) + where + ": " + DelayWords.asking(callsGo, now)
                + ".";
    }
}
