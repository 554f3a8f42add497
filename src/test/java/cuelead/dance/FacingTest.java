package cuelead.dance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FacingTest {
    /** Right is clockwise from above: a quarter right from 12:00 faces 3:00. Common practice, no source. */
    @ParameterizedTest
    @CsvSource({
        "0, 90, 3:00", "0, -90, 9:00", "0, 180, 6:00", "0, -180, 6:00", "270, 90, 12:00", "90, -180, 9:00",
        "0, 45, 1:30", "0, -45, 10:30", "180, 45, 7:30", "90, 45, 4:30", "0, 360, 12:00", "0, 450, 3:00",
        "180, -720, 6:00", "0, 270, 9:00"
    })
    void turnsFromAFacing(int from, int turn, String clock) {
        assertEquals(clock, new Facing(from).after(new Turn(turn)).clock());
    }

    @Test
    void onlyTheFourWallsAndTheFourCornersAreFaced() {
        assertThrows(IllegalArgumentException.class, () -> new Facing(30));
        assertThrows(IllegalArgumentException.class, () -> new Facing(360));
        assertThrows(IllegalArgumentException.class, () -> new Facing(-90));
        assertThrows(IllegalArgumentException.class, () -> new Turn(100));
    }

    @Property(seed = "20261125")
    void turningTwiceIsTurningTheSum(
            @ForAll @IntRange(min = -32, max = 32) int one, @ForAll @IntRange(min = -32, max = 32) int other) {
        Turn first = new Turn(one * 45);
        Turn second = new Turn(other * 45);
        assertEquals(
                Facing.FRONT.after(first.plus(second)),
                Facing.FRONT.after(first).after(second));
        assertEquals(Facing.FRONT, Facing.FRONT.after(first).after(first.mirrored()));
        assertEquals(first, first.mirrored().mirrored());
        assertEquals(
                Facing.FRONT.after(first),
                Facing.FRONT.after(Facing.FRONT.after(first).fromFront()));
    }
}
