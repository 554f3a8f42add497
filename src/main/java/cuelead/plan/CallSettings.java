package cuelead.plan;

import cuelead.dance.Metre;
import cuelead.time.Beats;

/**
 * What is to be called and how early.
 *
 * @param lead        from a call to the beat that it is for; more than 0 and at most 16 beats. Default 2: between
 *                    the 1-2 beats of the Roundalab Reference Manual 1987 and the 2-4 of contra and group-exercise
 *                    calling
 * @param sectionLead the same for the first call of a section: 4, "4-beat call for a new move" (a group-exercise
 *                    instructor training site); never less than the lead
 * @param level       how much is called in the first wall
 * @param fading      whether that grows less from wall to wall
 */
public record CallSettings(Beats lead, Beats sectionLead, CallLevel level, Fading fading) {
    public static final Beats DEFAULT_LEAD = Beats.of(2);
    public static final Beats DEFAULT_SECTION_LEAD = Beats.of(4);
    private static final Beats MOST_LEAD = Beats.of(16);
    /** "Wall one" and the first section. */
    private static final int OPENING_CALLS_COUNTS = 4;

    /** Whether the level steps down from wall to wall. */
    public enum Fading {
        STEADY,
        WALL_BY_WALL
    }

    public CallSettings {
        if (lead.compareTo(Beats.ZERO) <= 0 || lead.compareTo(MOST_LEAD) > 0) {
            throw new IllegalArgumentException("lead out of range (0, 16] beats: " + lead.toDecimal());
        }
    }

    /** All words, with this lead. */
    public static CallSettings withLead(Beats lead) {
        return new CallSettings(lead, longer(lead, DEFAULT_SECTION_LEAD), CallLevel.WORDS, Fading.STEADY);
    }

    /**
     * The same where beats are slower: the lead lasts as many seconds as at full speed, in half beats, since words are
     * spoken as fast as ever and a call with the same lead in beats would come far too early. It is never less than a
     * beat, unless it was, so that dancers can count on it. Faster, it stays.
     *
     * @param ofFull share of full speed, more than 0
     */
    public CallSettings atPace(double ofFull) {
        Beats there = atPace(lead, ofFull);
        return new CallSettings(there, longer(there, atPace(sectionLead, ofFull)), level, fading);
    }

    private static Beats atPace(Beats lead, double ofFull) {
        if (ofFull >= 1 || lead.compareTo(Beats.ONE) <= 0) {
            return lead;
        }
        return longer(Beats.ONE, Beats.HALF.times(Math.round(lead.toDecimal() * ofFull * 2)));
    }

    /** The level of a wall, from 1. */
    public CallLevel levelOf(int wall) {
        CallLevel now = level;
        for (int passed = 1; fading == Fading.WALL_BY_WALL && passed < wall; passed++) {
            now = now.faded();
        }
        return now;
    }

    /** Whole eights or sixes before count 1 that the opening calls and the count-in need where there is no music. */
    public int openingCounts(Metre metre) {
        int section = metre.countsInSection();
        int wanted = (int) CountIn.reserved(metre, lead.toDecimal()).toDecimal() + OPENING_CALLS_COUNTS;
        return (wanted + section - 1) / section * section;
    }

    private static Beats longer(Beats a, Beats b) {
        return a.compareTo(b) >= 0 ? a : b;
    }
}
