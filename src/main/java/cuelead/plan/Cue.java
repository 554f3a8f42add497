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
     * How much a call is needed, and in which order they choose their time. The nearest to its beat is first: each
     * later one can only move earlier, so what is heard is in the order restart, wall, section, turn. Wishes take
     * the time that is left.
     */
    enum Need {
        TURN,
        SECTION,
        WALL,
        ANNOUNCEMENT,
        EARLY_WARNING,
        WISH
    }

    Cue {
        phrases = List.copyOf(phrases);
    }
}
