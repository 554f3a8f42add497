package cuelead.lesson;

import cuelead.time.Tempo;

/** How fast a pass goes. */
public sealed interface Pace {
    /** Spoken counts at first: "about 60-70 %" of the tempo of the song (common practice, no source). */
    Share WALK = new Share(0.65);
    /** Then "75-85 %" (common practice, no source). */
    Share STEADY = new Share(0.8);

    Share FULL = new Share(1);

    /** Where none is named: walking to clicks, for slowed music sounds poor below some 70 %; music as it is. */
    static Pace usual(Pass.Over over) {
        return over == Pass.Over.CLICKS ? WALK : FULL;
    }

    /** The tempo where full speed is another. */
    Tempo at(Tempo full);

    /**
     * A share of full speed.
     *
     * @param ofFull {@value #LEAST} to {@value #MOST}
     */
    record Share(double ofFull) implements Pace {
        public static final double LEAST = 0.4;
        public static final double MOST = 1.25;

        public Share {
            if (!(ofFull >= LEAST && ofFull <= MOST)) {
                throw new IllegalArgumentException("a pace of " + ofFull);
            }
        }

        @Override
        public Tempo at(Tempo full) {
            return new Tempo(full.beatsPerMinute() * ofFull);
        }
    }

    /** A tempo of its own. */
    record Beats(Tempo tempo) implements Pace {
        @Override
        public Tempo at(Tempo full) {
            return tempo;
        }
    }
}
