package cuelead.dsp.beat;

import java.util.EnumMap;
import java.util.Map;

/**
 * What speaks at each beat for a bar or a phrase to begin there, each mark as its distance from the song's mean in standard
 * deviations, but for the odds of the network as they are, which know bars of two from bars of four: the network's ear for the first of a bar and of a phrase; a change of chord (Goto 2001, "An audio-based real-time beat
 * tracking system for music with or without drum-sounds", section 3.3); a change of sound between the bars before and
 * after (Foote 2000); a crash; a fill before; a bass note.
 */
final class Marks {
    /** From about 5 kHz on: cymbals. */
    private static final int FIRST_CYMBAL_BAND = 63;
    /** 150 Hz to 1.5 kHz: drum skins. */
    private static final int FIRST_SKIN_BAND = 6;

    private static final int LAST_SKIN_BAND = 44;
    private static final double REACH_SECONDS = 0.045;
    private static final double MOST_DEVIATIONS = 4;

    /** The marks, in the order of the rows. */
    enum Mark {
        DOWNBEAT,
        DOWNBEAT_ODDS,
        PHRASE_ODDS,
        CHORD,
        CHORD_OF_TWO,
        CHANGE_4,
        CHANGE_8,
        CHANGE_16,
        NOTES_16,
        CRASH,
        FILL,
        BASS
    }

    private final Map<Mark, double[]> rows = new EnumMap<>(Mark.class);

    Marks(BandSpectrum song, Activations heard, double[] seconds) {
        BeatSound sound = new BeatSound(song, seconds);
        Onsets bass = Onsets.of(song, 0, Onsets.LOW_BANDS);
        Onsets skins = Onsets.of(song, FIRST_SKIN_BAND, LAST_SKIN_BAND);
        for (Mark mark : Mark.values()) {
            rows.put(mark, new double[seconds.length]);
        }
        for (int i = 0; i < seconds.length; i++) {
            double downbeat = downbeat(heard, seconds[i]);
            set(Mark.DOWNBEAT, i, downbeat);
            set(Mark.DOWNBEAT_ODDS, i, downbeat);
            set(Mark.PHRASE_ODDS, i, phrase(heard, seconds[i]));
            set(Mark.CHORD, i, sound.chordChange(i, 1));
            set(Mark.CHORD_OF_TWO, i, sound.chordChange(i, 2));
            set(Mark.CHANGE_4, i, sound.change(i, 4));
            set(Mark.CHANGE_8, i, sound.change(i, 8));
            set(Mark.CHANGE_16, i, sound.change(i, 16));
            set(Mark.NOTES_16, i, sound.chordChange(i, 16));
            set(Mark.CRASH, i, crash(sound, i));
            set(Mark.FILL, i, fill(skins, seconds, i));
            set(Mark.BASS, i, bass.near(seconds[i], REACH_SECONDS));
        }
        rows.forEach((mark, row) -> {
            if (mark != Mark.DOWNBEAT_ODDS && mark != Mark.PHRASE_ODDS) {
                standardize(row);
            }
        });
    }

    private void set(Mark mark, int beat, double value) {
        rows.get(mark)[beat] = value;
    }

    /** How many beats there are. */
    int beats() {
        return rows.get(Mark.BASS).length;
    }

    /** At a beat; outside of the song as at its first or last beat. */
    double at(Mark mark, int beat) {
        double[] row = rows.get(mark);
        return row[Math.max(0, Math.min(row.length - 1, beat))];
    }

    /** By how much it stands out over the highest of its neighbours, so many on either side. */
    double peak(Mark mark, int beat, int neighbours) {
        double highest = Double.NEGATIVE_INFINITY;
        for (int i = 1; i <= neighbours; i++) {
            highest = Math.max(highest, Math.max(at(mark, beat - i), at(mark, beat + i)));
        }
        return at(mark, beat) - highest;
    }

    /** By how much it stands out over the mean of a bar before and a bar after. */
    double overNextBars(Mark mark, int beat, int barBeats) {
        return at(mark, beat) - (at(mark, beat - barBeats) + at(mark, beat + barBeats)) / 2;
    }

    private static double downbeat(Activations heard, double seconds) {
        int centre = (int) Math.round(seconds * BandSpectrum.FRAMES_PER_SECOND);
        double beat = 0;
        double down = 0;
        for (int t = Math.max(0, centre - 2); t <= Math.min(heard.frames() - 1, centre + 2); t++) {
            beat = Math.max(beat, heard.beat()[t]);
            down = Math.max(down, heard.downbeat()[t]);
        }
        return Math.log((down + 0.01) / (Math.max(0, beat - down) + 0.01));
    }

    private static double phrase(Activations heard, double seconds) {
        int centre = (int) Math.round(seconds * BandSpectrum.FRAMES_PER_SECOND);
        double highest = 0;
        for (int t = Math.max(0, centre - 2); t <= Math.min(heard.frames() - 1, centre + 2); t++) {
            highest = Math.max(highest, heard.phrase()[t]);
        }
        return Math.log((highest + 0.01) / (1.01 - highest));
    }

    private static double crash(BeatSound sound, int beat) {
        double before = 0;
        for (int i = 1; i <= 4; i++) {
            before += sound.level(beat - i, FIRST_CYMBAL_BAND, FIRST_CYMBAL_BAND + 8) / 4;
        }
        double now = sound.level(beat, FIRST_CYMBAL_BAND, FIRST_CYMBAL_BAND + 8);
        double next = sound.level(beat + 1, FIRST_CYMBAL_BAND, FIRST_CYMBAL_BAND + 8);
        return now + next / 2 - 1.5 * before;
    }

    /** Strokes between the last two beats before, over those a bar before them. */
    private static double fill(Onsets skins, double[] seconds, int beat) {
        return strokes(skins, seconds, beat - 2)
                + strokes(skins, seconds, beat - 1)
                - strokes(skins, seconds, beat - 6)
                - strokes(skins, seconds, beat - 5);
    }

    private static double strokes(Onsets skins, double[] seconds, int beat) {
        if (beat < 0 || beat + 1 >= seconds.length) {
            return 0;
        }
        double sum = 0;
        for (int part = 1; part < 4; part++) {
            sum += skins.near(seconds[beat] + part / 4.0 * (seconds[beat + 1] - seconds[beat]), REACH_SECONDS / 2);
        }
        return sum;
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
