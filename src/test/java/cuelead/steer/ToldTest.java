package cuelead.steer;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.dance.Facing;
import org.junit.jupiter.api.Test;

class ToldTest {
    @Test
    void minutesAreRoundedToTenthsAndNeverToSixtySeconds() {
        assertEquals("0:00.0", Told.minutes(0));
        assertEquals("1:00.0", Told.minutes(59.96));
        assertEquals("2:46.6", Told.minutes(166.55001));
        assertEquals("-0:00.5", Told.minutes(-0.5));
        assertEquals("0:00.0", Told.minutes(-0.01));
    }

    @Test
    void facingsAreClockTimes() {
        assertEquals("12 o'clock", Told.facing(Facing.FRONT));
        assertEquals("9 o'clock", Told.facing(new Facing(270)));
        assertEquals("10:30", Told.facing(new Facing(315)));
    }

    @Test
    void thingsAreCounted() {
        assertEquals("1 call", Told.number(1, "call"));
        assertEquals("0 calls", Told.number(0, "call"));
        assertEquals("2.5", Told.decimal(2.5));
        assertEquals("10", Told.decimal(10));
    }
}
