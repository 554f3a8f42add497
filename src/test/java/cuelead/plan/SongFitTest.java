package cuelead.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.dance.Dance;
import cuelead.dance.Facing;
import cuelead.dance.Metre;
import cuelead.dance.Turn;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Walls, tempo and finish of a dance over a steady song, worked out by hand. */
class SongFitTest {
    /** 32 counts at 104 a minute last 18.46 s; (200 - 9.23) / 18.46 = 10.33, so 10 walls and 11 counts of the next. */
    @Test
    void wallsUntilTheEnd() {
        SongFit fit = fit(PlanFixtures.eights(90), 104, 200);
        assertEquals(11, fit.walls());
        assertEquals(11, fit.countsOfLast(), 1);
        assertEquals(32 * 60.0 / 104, fit.secondsAWall(), 0.01);
        assertEquals(104, fit.bpm(), 0.01);
        assertEquals(new Facing(180), fit.endFacing());
    }

    /** The last wall is cut before its own turn, so the last step turns instead. */
    @Test
    void aFinishWithoutATurnToChange() {
        SongFit.Finish finish = fit(PlanFixtures.eights(90), 104, 200).toFront().orElseThrow();
        assertEquals(Turn.NONE, finish.written());
        assertEquals(new Turn(180), finish.instead());
        assertTrue(finish.count().takesWeight());
    }

    /** Whole walls: the quarter that the wall turns is changed, here into no turn, or the other way. */
    @ParameterizedTest
    @CsvSource({"90, 1, 0", "90, 2, -90", "90, 3, 180", "-90, 3, -180", "180, 1, 0"})
    void theTurnOfTheWallIsChanged(int turnDegrees, int walls, int insteadDegrees) {
        double seconds = (16 + 32 * walls) * 60.0 / 120 - 0.2;
        SongFit.Finish finish =
                fit(PlanFixtures.eights(turnDegrees), 120, seconds).toFront().orElseThrow();
        assertEquals(new Turn(turnDegrees), finish.written());
        assertEquals(
                Math.floorMod(insteadDegrees, 360),
                Math.floorMod(finish.instead().degrees(), 360));
        Facing end = finish.count().facingBefore().after(finish.instead());
        assertEquals(Facing.FRONT, end);
    }

    @Test
    void nothingToChangeAtTheFront() {
        assertTrue(fit(PlanFixtures.eights(0), 120, 100).toFront().isEmpty());
    }

    /** Waltz 76 to 100 in two of the lists (tempos.tsv). */
    @ParameterizedTest
    @CsvSource({"90, WITHIN", "180, WITHIN_OTHERWISE_COUNTED", "110, OUTSIDE"})
    void theTempoOfAWaltz(double bpm, SongFit.TempoVerdict verdict) {
        Dance waltz = PlanFixtures.dance(Metre.SIXES, PlanFixtures.part("A", 6, 4, 90), List.of(), List.of());
        SongFit fit = fit(waltz, bpm, 100);
        assertEquals("waltz", fit.style().orElseThrow());
        assertEquals(verdict, fit.tempo());
        assertEquals(3, fit.ranges().size());
    }

    @Test
    void aStyleThatIsNotTold() {
        assertEquals(
                SongFit.TempoVerdict.NOT_KNOWN,
                fit(PlanFixtures.eights(0), 120, 100).tempo());
    }

    private static SongFit fit(Dance dance, double bpm, double endSeconds) {
        return SongFit.of(PlanFixtures.timeline(dance, bpm, endSeconds));
    }
}
