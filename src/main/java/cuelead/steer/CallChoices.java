package cuelead.steer;

import cuelead.plan.CallLevel;
import cuelead.plan.CallSettings;
import cuelead.time.Beats;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.DoubleSupplier;

/** How calls are to be chosen, changed step by step, with what is said of each step. Used on one thread. */
public final class CallChoices {
    private static final Beats LEAST_LEAD = Beats.HALF;
    private static final Beats MOST_LEAD = Beats.of(16);
    private static final List<CallLevel> LEVELS = List.of(CallLevel.values());

    private final DoubleSupplier speed;
    private final Consumer<CallSettings> order;
    private CallSettings wanted;

    /**
     * Begins with what is in use.
     *
     * @param now   as at the song's own speed
     * @param speed of the song, 1 = its own
     * @param order takes what is wanted from then on, as at the song's own speed
     */
    CallChoices(CallSettings now, DoubleSupplier speed, Consumer<CallSettings> order) {
        wanted = now;
        this.speed = speed;
        this.order = order;
    }

    /** What was ordered last, with the lead that it comes to at the speed of the song. */
    CallSettings wanted() {
        return wanted.atPace(speed.getAsDouble());
    }

    String shorterLead() {
        return lead(Beats.ZERO.minus(Beats.HALF), "Calls come half a beat later.");
    }

    String longerLead() {
        return lead(Beats.HALF, "Calls come half a beat earlier.");
    }

    private String lead(Beats longer, String done) {
        Beats now = wanted().lead();
        Beats lead = atOwnSpeed(now.plus(longer));
        boolean isPossible = lead.compareTo(LEAST_LEAD) >= 0 && lead.compareTo(MOST_LEAD) <= 0;
        if (!isPossible) {
            return "Calls come " + beats(now) + " ahead already.";
        }
        CallSettings usual = CallSettings.withLead(lead);
        return choose(new CallSettings(lead, usual.sectionLead(), wanted.level(), wanted.fading()), done);
    }

    /** In half beats, which comes to the same half beat again when the song is slow. */
    private Beats atOwnSpeed(Beats lead) {
        double ratio = Math.min(1, speed.getAsDouble());
        boolean isKept = ratio == 1 || lead.compareTo(Beats.ONE) < 0;
        return isKept ? lead : Beats.HALF.times(Math.round(lead.toDecimal() / ratio * 2));
    }

    private static String beats(Beats lead) {
        return lead.equals(Beats.HALF) ? "half a beat" : Told.beats(lead.toDecimal());
    }

    String fewer() {
        return level(1, "Fewer calls.", "Nothing is called already.");
    }

    String more() {
        return level(-1, "More calls.", "Every word is called already.");
    }

    private String level(int fewer, String done, String atLimit) {
        int index = LEVELS.indexOf(wanted.level()) + fewer;
        if (index < 0 || index >= LEVELS.size()) {
            return atLimit;
        }
        CallLevel level = LEVELS.get(index);
        return choose(new CallSettings(wanted.lead(), wanted.sectionLead(), level, wanted.fading()), done);
    }

    String fadeOrNot() {
        return wanted.fading() == CallSettings.Fading.STEADY
                ? fading(CallSettings.Fading.WALL_BY_WALL, "Calls grow fewer from wall to wall.")
                : fading(CallSettings.Fading.STEADY, "Calls do not fade any more.");
    }

    private String fading(CallSettings.Fading fading, String done) {
        return choose(new CallSettings(wanted.lead(), wanted.sectionLead(), wanted.level(), fading), done);
    }

    /** Every word again, in every wall. */
    String allBack() {
        CallSettings all =
                new CallSettings(wanted.lead(), wanted.sectionLead(), CallLevel.WORDS, CallSettings.Fading.STEADY);
        return choose(all, "All calls are back.");
    }

    private String choose(CallSettings other, String done) {
        wanted = other;
        order.accept(other);
        return done;
    }
}
