package cuelead.dance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class WallWalkTest {
    /** Wall n starts at (n - 1) times the net turn; the front comes again after 360 / gcd(net, 360) walls. */
    @Property(seed = "20261125")
    void withoutRestartsEveryWallTurnsOn(
            @ForAll @IntRange(min = -8, max = 8) int eighths, @ForAll @IntRange(min = 1, max = 20) int wall) {
        WallWalk walk = new WallWalk(DanceFixtures.turning(eighths * 45, 0, List.of(), List.of()));
        assertEquals(new Facing(Math.floorMod((wall - 1) * eighths * 45, 360)), walk.startOf(wall));
        assertEquals(walk.startOf(wall + 1), walk.beforeTags(wall));
        assertEquals(walk.startOf(wall), walk.startOf(wall + 8));
    }

    @Test
    void fourWallsOfAQuarterComeHome() {
        WallWalk walk = new WallWalk(DanceFixtures.turning(90, 4, List.of(), List.of()));
        assertEquals(
                List.of("12:00", "3:00", "6:00", "9:00", "12:00"),
                List.of(1, 2, 3, 4, 5).stream()
                        .map(wall -> walk.startOf(wall).clock())
                        .toList());
    }

    /** The quarter is on count 9: a wall that restarts after count 8 has not turned yet. */
    @Test
    void aRestartBeforeTheTurnLeavesTheWallAsItWas() {
        Restart restart = new Restart(2, 8, Optional.empty(), 0);
        WallWalk walk = new WallWalk(DanceFixtures.turning(90, 4, List.of(), List.of(restart)));
        assertEquals("3:00", walk.startOf(2).clock());
        assertEquals("3:00", walk.startOf(3).clock());
        assertEquals("6:00", walk.startOf(4).clock());
        assertEquals("3:00", walk.after(2, 8).clock());
        assertEquals("6:00", walk.after(2, 9).clock());
    }

    @Test
    void aTagTurnsOnBetweenTwoWalls() {
        Part turning = new Part("TAG", List.of(DanceFixtures.marching("TAG", new Turn(180))));
        Tag tag = new Tag(turning, List.of(1), Optional.empty(), 0);
        WallWalk walk = new WallWalk(DanceFixtures.turning(90, 4, List.of(tag), List.of()));
        assertEquals("3:00", walk.beforeTags(1).clock());
        assertEquals("9:00", walk.startOf(2).clock());
    }

    @Test
    void wallsAndCountsAreNumberedFromOne() {
        WallWalk walk = new WallWalk(DanceFixtures.turning(90, 4, List.of(), List.of()));
        assertThrows(IllegalArgumentException.class, () -> walk.startOf(0));
        assertThrows(IllegalArgumentException.class, () -> new Restart(0, 8, Optional.empty(), 0));
        assertThrows(IllegalArgumentException.class, () -> new Restart(1, 0, Optional.empty(), 0));
        Part tag = new Part("TAG", List.of());
        assertThrows(IllegalArgumentException.class, () -> new Tag(tag, List.of(2, 0), Optional.empty(), 0));
    }
}
