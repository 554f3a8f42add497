package cuelead.compose;

import cuelead.time.Tempo;
import java.util.List;

/**
 * A score that was read without a mistake.
 *
 * @param name   of its file, without the ending
 * @param band   everyone who plays
 * @param form   in order, at least one
 */
record Score(String name, Header header, List<Player> band, List<FormLine> form) {
    /**
     * What holds for the whole song.
     *
     * @param beatsPerBar  3 or 4
     * @param drift        how far the tempo may wander to either side, 0.03 = 3 %
     * @param swing        share of the beat at which its second half begins, 0.5 = even
     * @param humanSeconds how far notes may stray to either side of their time
     */
    record Header(
            String title,
            int beatsPerBar,
            Tempo tempo,
            double drift,
            Key key,
            long seed,
            double swing,
            double humanSeconds) {
        /** Counts that dancers count to: eights over bars of four, sixes over bars of three. */
        int countsPerSection() {
            return 2 * beatsPerBar;
        }
    }

    Score {
        band = List.copyOf(band);
        form = List.copyOf(form);
    }
}
