package cuelead.dsp.beat;

import java.util.EnumMap;
import java.util.Map;
import java.util.function.IntToDoubleFunction;

/**
 * What speaks at each beat for a bar or a phrase to begin there, each mark as its distance from the song's mean in standard
 * deviations, but for the odds of the network as they are, which know bars of two from bars of four: the network's ear for
 * the first of a bar and of a phrase; a change of chord (Goto 2001, "An audio-based real-time beat tracking system for music
 * with or without drum-sounds", section 3.3); a change of sound, notes or drumming between the bars before and after (Foote
 * 2000); the entry or end of an instrument; a crash; a fill before; how bars come back in pairs.
 */
final class Marks {
    private static final int CYMBAL_BANDS = 8;
    private static final double MOST_DEVIATIONS = 4;

    /** The marks, in the order of the rows; numbers are beats on each side, or with BARS whole bars. */
    enum Mark {
        DOWNBEAT,
        DOWNBEAT_ODDS,
        PHRASE_ODDS,
        CHORD,
        CHORD_OF_TWO,
        CHANGE_4,
        CHANGE_8,
        CHANGE_16,
        NOTES_4,
        NOTES_8,
        NOTES_16,
        NOVELTY_16,
        NOVELTY_32,
        PAIRING,
        DRUMMING_BAR,
        DRUMMING_2_BARS,
        DRUMMING_4_BARS,
        LOW_STEP_BAR,
        LOW_STEP_4_BARS,
        MIDDLE_STEP_BAR,
        MIDDLE_STEP_4_BARS,
        HIGH_STEP_BAR,
        HIGH_STEP_4_BARS,
        CRASH,
        CRASH_OVER_BARS,
        FILL,
        ODDNESS,
        HIT,
        BASS
    }

    private final int beats;
    private final int barBeats;
    private final Map<Mark, double[]> rows = new EnumMap<>(Mark.class);

    /** @param barBeats over how many beats a bar is compared with the next: 4, in three-beat bars 3 */
    Marks(HeardBeats heard, int barBeats) {
        this.beats = heard.beats();
        this.barBeats = barBeats;
        addHeard(heard);
        addSound(heard.sound());
        addStrokes(heard.strokes());
        put(Mark.NOVELTY_16, i -> heard.likeness().novelty(i, 16));
        put(Mark.NOVELTY_32, i -> heard.likeness().novelty(i, 32));
        put(Mark.PAIRING, i -> heard.likeness().pairing(i, barBeats));
    }

    private void addHeard(HeardBeats heard) {
        put(Mark.DOWNBEAT, heard::downbeatOdds);
        rows.put(Mark.DOWNBEAT_ODDS, row(heard::downbeatOdds));
        rows.put(Mark.PHRASE_ODDS, row(heard::phraseOdds));
    }

    private void addSound(BeatSound sound) {
        put(Mark.CHORD, i -> sound.chordChange(i, 1));
        put(Mark.CHORD_OF_TWO, i -> sound.chordChange(i, 2));
        put(Mark.CHANGE_4, i -> sound.change(i, 4));
        put(Mark.CHANGE_8, i -> sound.change(i, 8));
        put(Mark.CHANGE_16, i -> sound.change(i, 16));
        put(Mark.NOTES_4, i -> sound.chordChange(i, 4));
        put(Mark.NOTES_8, i -> sound.chordChange(i, 8));
        put(Mark.NOTES_16, i -> sound.chordChange(i, 16));
        addSteps(sound, Mark.LOW_STEP_BAR, Mark.LOW_STEP_4_BARS, 0, 12);
        addSteps(sound, Mark.MIDDLE_STEP_BAR, Mark.MIDDLE_STEP_4_BARS, 24, 50);
        addSteps(sound, Mark.HIGH_STEP_BAR, Mark.HIGH_STEP_4_BARS, 55, 74);
        put(Mark.CRASH, i -> crash(sound, i));
        put(
                Mark.CRASH_OVER_BARS,
                i -> struck(sound, i) - Math.max(struck(sound, i - barBeats), struck(sound, i + barBeats)));
    }

    private void addSteps(BeatSound sound, Mark overABar, Mark overFour, int fromBand, int toBand) {
        put(overABar, i -> sound.step(i, barBeats, fromBand, toBand));
        put(overFour, i -> sound.step(i, 4 * barBeats, fromBand, toBand));
    }

    private void addStrokes(BeatStrokes strokes) {
        put(Mark.DRUMMING_BAR, i -> strokes.change(i, 1, barBeats));
        put(Mark.DRUMMING_2_BARS, i -> strokes.change(i, 2, barBeats));
        put(Mark.DRUMMING_4_BARS, i -> strokes.change(i, 4, barBeats));
        put(Mark.FILL, i -> strokes.fill(i, barBeats));
        put(Mark.ODDNESS, i -> strokes.oddness(i, barBeats));
        put(Mark.HIT, strokes::hit);
        put(Mark.BASS, strokes::bass);
    }

    private double[] row(IntToDoubleFunction value) {
        double[] row = new double[beats];
        for (int i = 0; i < beats; i++) {
            row[i] = value.applyAsDouble(i);
        }
        return row;
    }

    private void put(Mark mark, IntToDoubleFunction value) {
        double[] row = row(value);
        standardize(row);
        rows.put(mark, row);
    }

    /** How many beats there are. */
    int beats() {
        return beats;
    }

    /** At a beat; outside of the song as at its first or last beat. */
    double at(Mark mark, int beat) {
        double[] row = rows.get(mark);
        return row[Math.max(0, Math.min(row.length - 1, beat))];
    }

    /** By how much it stands out over the higher of its neighbours. */
    double overNeighbours(Mark mark, int beat) {
        return at(mark, beat) - Math.max(at(mark, beat - 1), at(mark, beat + 1));
    }

    /** By how much it stands out over the higher of the beats a bar before and a bar after. */
    double overNextBars(Mark mark, int beat) {
        return at(mark, beat) - Math.max(at(mark, beat - barBeats), at(mark, beat + barBeats));
    }

    private static double cymbals(BeatSound sound, int beat) {
        return sound.level(beat, Onsets.FIRST_CYMBAL_BAND, Onsets.FIRST_CYMBAL_BAND + CYMBAL_BANDS);
    }

    /** A crash rings into the next beat. */
    private static double struck(BeatSound sound, int beat) {
        return cymbals(sound, beat) + cymbals(sound, beat + 1) / 2;
    }

    private static double crash(BeatSound sound, int beat) {
        double before = 0;
        for (int i = 1; i <= 4; i++) {
            before += cymbals(sound, beat - i) / 4;
        }
        return struck(sound, beat) - 1.5 * before;
    }

    private static void standardize(double[] row) {
        double mean = 0;
        for (double value : row) {
            mean += value / row.length;
        }
        double variance = 1e-12;
        for (double value : row) {
            variance += (value - mean) * (value - mean) / row.length;
        }
        for (int i = 0; i < row.length; i++) {
            double deviations = (row[i] - mean) / Math.sqrt(variance);
            row[i] = Math.max(-MOST_DEVIATIONS, Math.min(MOST_DEVIATIONS, deviations));
        }
    }
}
