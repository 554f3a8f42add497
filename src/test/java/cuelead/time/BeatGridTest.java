package cuelead.time;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class BeatGridTest {
    @Property(seed = "20261125")
    void positionsRoundTripThroughSeconds(
            @ForAll @Size(min = 1, max = 30) List<@DoubleRange(min = 0.2, max = 1.5) Double> gaps,
            @ForAll @LongRange(min = -9600, max = 48000) long ticks) {
        BeatGrid grid = drifting(gaps);
        BeatPosition position = new BeatPosition(ticks);
        assertTrue(Math.abs(ticks - grid.positionAt(grid.secondsAt(position)).ticks()) <= 1);
    }

    @Property(seed = "20261125")
    void timeRunsForward(
            @ForAll @Size(min = 1, max = 30) List<@DoubleRange(min = 0.2, max = 1.5) Double> gaps,
            @ForAll @LongRange(min = -9600, max = 48000) long ticks) {
        BeatGrid grid = drifting(gaps);
        assertTrue(grid.secondsAt(new BeatPosition(ticks + 1)) > grid.secondsAt(new BeatPosition(ticks)));
    }

    @Test
    void anEvenGridKeepsItsTempoBeyondBothEnds() {
        BeatGrid grid = BeatGrid.steady(new Tempo(120), 1.0, 8, 4);
        assertEquals(0.5, grid.secondsAt(BeatPosition.atBeat(-1)), 1e-12);
        assertEquals(6.0, grid.secondsAt(BeatPosition.atBeat(10)), 1e-12);
        assertEquals(120, grid.medianTempo().beatsPerMinute(), 1e-9);
    }

    @Test
    void beatsMustRise() {
        assertThrows(
                IllegalArgumentException.class,
                () -> new BeatGrid(new double[] {1, 1}, new int[] {1, 2}, new int[] {0, 0}));
    }

    /** Worked examples of the trade's tempo arithmetic: a wall of 32 at 104, 48 at 90, 16 at 64 a minute. */
    @Test
    void wallsLastAsLongAsTheTradeSays() {
        assertEquals(18.46, new Tempo(104).secondsOf(Beats.of(32)), 0.005);
        assertEquals(32.0, new Tempo(90).secondsOf(Beats.of(48)), 1e-9);
        assertEquals(15.0, new Tempo(64).secondsOf(Beats.of(16)), 1e-9);
    }

    private static BeatGrid drifting(List<Double> gaps) {
        double[] seconds = new double[gaps.size() + 1];
        int[] inBar = new int[gaps.size() + 1];
        for (int i = 0; i <= gaps.size(); i++) {
            seconds[i] = i == 0 ? 0.7 : seconds[i - 1] + gaps.get(i - 1);
            inBar[i] = 1 + i % 4;
        }
        return new BeatGrid(seconds, inBar, new int[gaps.size() + 1]);
    }
}
