package cuelead.window.floor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.plan.Timeline;
import cuelead.steer.Calls;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** The small dance: count 1 at 8 s, half a second a count, wall 2 from 12 s on, facing the back. */
class FloorScenesTest {
    private final Timeline timeline = Calls.timeline(18);

    private FloorScene at(double songSeconds) {
        return new FloorScenes().scene(Calls.moment(timeline, songSeconds));
    }

    @Test
    void beforeTheDanceNobodyFacesAnywhere() {
        assertEquals(OptionalInt.empty(), at(4).degrees());
        assertEquals("Starts in 8 beats", at(4).wall());
        assertEquals(-1, at(4).block());
    }

    @Test
    void theDancersFaceWhereTheTurnsBringThem() {
        assertEquals(OptionalInt.of(0), at(8.1).degrees());
        assertEquals(OptionalInt.of(180), at(12.1).degrees());
        assertEquals("Wall 2", at(12.1).wall());
    }

    @Test
    void theEightGoesOnWithTheBeat() {
        FloorScene third = at(9.1);
        assertEquals(2, third.count());
        assertEquals(0.2, third.beat(), 1e-3);
        assertEquals(List.of(new FloorScene.Block("S1", 8)), third.blocks());
        assertEquals(0, third.block());
        assertTrue(third.wallEnd().contains("wall 2"), third.wallEnd());
    }
}
