package cuelead.compose;

import cuelead.time.Beats;
import java.util.List;

/**
 * A drum pattern or a fill.
 *
 * @param bars whole bars, 1 or more
 * @param hits in any order
 */
record DrumPattern(String name, int bars, List<Hit> hits) {
    /**
     * One stroke.
     *
     * @param at       from the pattern's beginning
     * @param velocity 1 to 127
     */
    record Hit(Beats at, DrumSound sound, int velocity) {}

    DrumPattern {
        hits = List.copyOf(hits);
    }
}
