package cuelead.time;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;

class TimeMapTest {
    @Provide
    Arbitrary<TimeMap> maps() {
        Arbitrary<Speed> speeds = Arbitraries.integers().between(4_000, 12_500).map(Speed::new);
        Arbitrary<Long> steps = Arbitraries.longs().between(1, 100_000);
        return Combinators.combine(
                        speeds.list().ofMinSize(1).ofMaxSize(6), steps.list().ofSize(6))
                .as((rates, gaps) -> {
                    TimeMap map = TimeMap.from(-500, 1_000, rates.get(0));
                    long at = -500;
                    for (int i = 1; i < rates.size(); i++) {
                        at += gaps.get(i);
                        map = map.then(at, rates.get(i));
                    }
                    return map;
                });
    }

    @Test
    void halfSpeedTakesTwiceAsLong() {
        TimeMap map = TimeMap.even(Speed.of(0.5));
        assertEquals(2_000, map.outputFrameAt(1_000));
        assertEquals(500, map.songFrameAt(1_000));
        assertEquals(1_000.5, map.outputAt(500.25));
    }

    @Test
    void aChangeGoesOnWhereTheSongIs() {
        TimeMap map = TimeMap.even(Speed.of(0.8)).then(1_000, Speed.of(1.25));
        assertEquals(800, map.songFrameAt(1_000));
        assertEquals(2_050, map.songFrameAt(2_000));
        assertEquals(2_000, map.outputFrameAt(2_050));
        assertEquals(Speed.of(0.8), map.speedAt(999));
        assertEquals(Speed.of(1.25), map.speedAt(1_000));
    }

    @Property
    void theOutputFrameOfASongFrameIsTheFirstNotBeforeIt(
            @ForAll("maps") TimeMap map, @ForAll @LongRange(min = -10_000, max = 1_000_000) long song) {
        long output = map.outputFrameAt(song);
        assertTrue(map.songPartsAt(output) >= song * Speed.UNIT);
        assertTrue(map.songPartsAt(output - 1) < song * Speed.UNIT);
    }

    @Property
    void neverGoesBack(@ForAll("maps") TimeMap map, @ForAll @IntRange(min = -10_000, max = 600_000) int output) {
        assertTrue(map.songPartsAt(output + 1) > map.songPartsAt(output));
    }

    @Property
    void bothWaysBetweenTheFramesUndoEachOther(
            @ForAll("maps") TimeMap map, @ForAll @IntRange(min = 0, max = 600_000) int output) {
        assertEquals(output, map.outputAt(map.songAt(output)), 1e-6);
        assertEquals(map.songPartsAt(output) / (double) Speed.UNIT, map.songAt(output), 1e-6);
    }

    @Test
    void whatHasBeenHeardCannotBeChanged() {
        TimeMap map = TimeMap.even(Speed.of(0.8)).then(1_000, Speed.of(1.25));
        assertThrows(IllegalArgumentException.class, () -> map.then(999, Speed.ORIGINAL));
    }

    @Test
    void speedsOutOfRangeAreNone() {
        assertTrue(Speed.isSpeed(0.4) && Speed.isSpeed(1.25));
        assertTrue(!Speed.isSpeed(0.3999) && !Speed.isSpeed(1.2501) && !Speed.isSpeed(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> new Speed(3_999));
    }
}
