package cuelead.song;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.report.Refused;
import cuelead.song.Hearing.Stretch;
import cuelead.time.BeatGrid;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class CorrectionTest {
    private static final Optional<Stretch> ALL = Optional.empty();

    /** Beats each half a second from 1.0 on, in bars of four and eights; the first is beat 1, count 1. */
    private static BeatGrid even(int beats) {
        double[] seconds = new double[beats];
        int[] inBar = new int[beats];
        int[] inPhrase = new int[beats];
        for (int i = 0; i < beats; i++) {
            seconds[i] = 1 + 0.5 * i;
            inBar[i] = 1 + i % 4;
            inPhrase[i] = 1 + i % 8;
        }
        return new BeatGrid(seconds, inBar, inPhrase);
    }

    private static void assertBeat(BeatGrid grid, int index, double seconds, int inBar, int inPhrase) {
        assertEquals(seconds, grid.beatSeconds(index), 1e-9, "seconds of beat " + index);
        assertEquals(inBar, grid.beatInBar(index), "in the bar, beat " + index);
        assertEquals(inPhrase, grid.countInPhrase(index), "in the phrase, beat " + index);
    }

    @Test
    void theCountMovesAndTheBeatsStay() throws Refused {
        BeatGrid later = Correction.COUNT_LATER.apply(even(20), ALL);
        assertBeat(later, 0, 1, 4, 8);
        assertBeat(later, 1, 1.5, 1, 1);
        assertBeat(later, 19, 10.5, 3, 3);
        assertEquals(even(20), Correction.COUNT_EARLIER.apply(later, ALL));
    }

    @Test
    void beatsMoveBetweenThemselves() throws Refused {
        BeatGrid moved = Correction.HALF_BEAT.apply(even(20), ALL);
        assertBeat(moved, 0, 1.25, 1, 1);
        assertBeat(moved, 19, 10.75, 4, 4);
    }

    @Test
    void twiceAndHalfUndoEachOther() throws Refused {
        BeatGrid twice = Correction.TWICE.apply(even(17), ALL);
        assertEquals(33, twice.size());
        assertBeat(twice, 9, 3.25, 2, 2);
        assertEquals(even(17), Correction.HALF.apply(twice, ALL));
    }

    @Test
    void threeToTwoAndBack() throws Refused {
        BeatGrid fewer = Correction.TWO_FOR_THREE.apply(even(25), ALL);
        assertEquals(17, fewer.size());
        assertBeat(fewer, 2, 2.5, 3, 3);
        BeatGrid back = Correction.THREE_FOR_TWO.apply(fewer, ALL);
        assertEquals(25, back.size());
        assertBeat(back, 3, 2.5, 4, 4);
    }

    @Test
    void theBeatNextToATimeBecomesOne() throws Refused {
        BeatGrid corrected = Correction.oneAt(3.6, even(20), ALL);
        assertBeat(corrected, 5, 3.5, 1, 1);
        assertBeat(corrected, 0, 1, 4, 4);
        assertEquals(even(20), Correction.oneAt(5.1, even(20), ALL));
    }

    @Test
    void outsideOfAStretchNothingChanges() throws Refused {
        BeatGrid corrected = Correction.HALF_BEAT.apply(even(40), Optional.of(new Stretch(5, 9.9)));
        assertBeat(corrected, 7, 4.5, 4, 8);
        double least = Double.MAX_VALUE;
        double most = 0;
        for (int i = 1; i < corrected.size(); i++) {
            double gap = corrected.beatSeconds(i) - corrected.beatSeconds(i - 1);
            least = Math.min(least, gap);
            most = Math.max(most, gap);
        }
        assertTrue(least > 0.34 && most < 0.76, "gaps from " + least + " to " + most);
        assertEquals(20.5, corrected.beatSeconds(corrected.size() - 1), 1e-9);
    }

    @Test
    void aStretchWithoutBeatsIsRefused() {
        Refused refused =
                assertThrows(Refused.class, () -> Correction.TWICE.apply(even(20), Optional.of(new Stretch(100, 200))));
        assertTrue(refused.getMessage().contains("0 beats"), refused.getMessage());
    }

    @Test
    void aChangeByHandShows() {
        BeatGrid beats = even(20);
        List<String> comments = List.of(BeatMark.HEARD.of(beats));
        assertTrue(BeatMark.HEARD.fits(beats, comments));
        BeatGrid changed = GridBeat.grid(CountShift.by(1, GridBeat.of(beats)));
        assertTrue(!BeatMark.HEARD.fits(changed, comments));
    }
}
