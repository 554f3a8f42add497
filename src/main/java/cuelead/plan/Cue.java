package cuelead.plan;

import cuelead.time.Beats;
import java.util.List;

/**
 * A wish for a call, before it is known whether and how it fits.
 *
 * @param kind    what it is
 * @param need    how much it is needed
 * @param target  the count that it is for
 * @param phrases what may be said, best first
 * @param lead    how early it should come
 */
record Cue(Call.Kind kind, Need need, DancedCount target, List<Phrase> phrases, Beats lead) {
    /**
     * What a call is needed for. Calls for one count are heard in the reverse of this order: wall, restart or tag,
     * section, turn. A wish takes the time that is left.
     */
    enum Need {
        OWN_WORD,
        TURN,
        SECTION,
        ANNOUNCEMENT,
        WALL,
        EARLY_WARNING,
        WISH
    }

    Cue {
        phrases = List.copyOf(phrases);
    }

    /** Whether it tells what is to be danced now, and would mislead if it came long before. */
    boolean isOfTheMoment() {
        return need == Need.OWN_WORD || need == Need.TURN || need == Need.SECTION;
    }
}
