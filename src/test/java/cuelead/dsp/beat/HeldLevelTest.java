package cuelead.dsp.beat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Tempi that dances have: common practice, no source. */
class HeldLevelTest {
    @Test
    void halfOfAFastTempoIsDoubted() {
        assertTrue(HeldLevel.isDoubted(path(78, 100)));
        assertTrue(HeldLevel.isDoubted(path(92, 100)));
    }

    @Test
    void aTempoWhoseDoubleNobodyDancesIsNot() {
        assertFalse(HeldLevel.isDoubted(path(110, 100)));
        assertFalse(HeldLevel.isDoubted(path(66, 100)));
    }

    @Test
    void twiceAsManyBeatsMustFitNearlyAsWell() {
        assertTrue(HeldLevel.isNearlyAsGood(path(156, 95), path(78, 100)));
        assertFalse(HeldLevel.isNearlyAsGood(path(156, 60), path(78, 100)));
    }

    @Test
    void twiceAsManyBeatsAreHeardWhereTheyAre() {
        float[] beat = new float[1500];
        for (int i = 0; i < beat.length; i++) {
            beat[i] = i % 19 == 0 ? 0.9f : 0.02f;
        }
        Activations heard = new Activations(beat, beat.clone(), new float[beat.length]);
        BarPath faster = HeldLevel.twiceAsMany(path(79, 100), heard, 2);
        assertEquals(
                0.38, faster.beats().get(10).seconds() - faster.beats().get(9).seconds(), 0.02);
    }

    private static BarPath path(double tempo, double logScore) {
        List<BarPath.PathBeat> beats = PathBeats.even(60 / tempo, 40, 8);
        return new BarPath(4, logScore, beats);
    }
}
