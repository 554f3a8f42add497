package cuelead.output;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.time.SampleRate;
import org.junit.jupiter.api.Test;

class HeardClockTest {
    private static final long ENDLESS = Long.MAX_VALUE;
    private static final long MILLI = 1_000_000;

    private final HeardClock clock = new HeardClock(new SampleRate(48_000), new HeldTime(0.05, 0));

    @Test
    void whatTheDeviceHoldsIsNotHeardYet() {
        clock.beginAt(1_000);
        clock.read(10_600, 0.06, 0);
        assertEquals(10_600 - 2_880, clock.heardAt(0, ENDLESS));
    }

    @Test
    void whatIsHeldIsHeardByTheClockUpToWhatWasHanded() {
        clock.read(10_600, 0.06, 0);
        assertEquals(10_600 - 1_440, clock.heardAt(30 * MILLI, ENDLESS));
        assertEquals(10_600, clock.heardAt(60 * MILLI, ENDLESS));
        assertEquals(10_600, clock.heardAt(5_000 * MILLI, ENDLESS));
    }

    @Test
    void itNeverGoesBackButWhenItIsSetBack() {
        clock.read(10_600, 0.06, 0);
        clock.heardAt(60 * MILLI, ENDLESS);
        clock.read(10_600, 0.06, 70 * MILLI);
        assertEquals(10_600, clock.heardAt(70 * MILLI, ENDLESS));
        clock.read(0, 0.06, 80 * MILLI);
        assertEquals(10_600, clock.handedFrame());
        clock.beginAt(400);
        assertEquals(400, clock.heardAt(90 * MILLI, ENDLESS));
    }

    @Test
    void aLatencyThatIsNotKnownIsTheUsualOne() {
        clock.read(10_000, 0, 0);
        assertEquals(10_000 - 2_400, clock.heardAt(0, ENDLESS));
    }

    @Test
    void nothingIsHeardBeyondTheEnd() {
        clock.read(12_000, 0.03, 0);
        assertEquals(9_999, clock.heardAt(0, 9_999));
    }
}
