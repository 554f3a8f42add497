package cuelead.output;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.output.DeviceWatch.Seen;
import cuelead.time.SampleRate;
import org.junit.jupiter.api.Test;

/** A device of 48 kHz that holds 60 ms, asks for 20 ms at a time and is looked at every 5 ms. */
class DeviceWatchTest {
    private static final SampleRate RATE = new SampleRate(48_000);
    private static final long LOOK_NANOS = 5_000_000;
    private static final int PERIOD_FRAMES = 960;

    private final DeviceWatch watch = new DeviceWatch(RATE);
    private long nanos = 1_000_000_000;
    private long handed;
    private double latencySeconds = 0.06;

    private Seen look() {
        return watch.look(handed, latencySeconds, nanos);
    }

    /** The device plays for 20 ms and takes as much. */
    private void playOnePeriod() {
        for (int i = 0; i < 4; i++) {
            assertEquals(Seen.FED, look());
            nanos += LOOK_NANOS;
            latencySeconds -= 0.005;
        }
        handed += PERIOD_FRAMES;
        latencySeconds += 0.02;
    }

    @Test
    void aDeviceThatIsFedInTimeIsFed() {
        for (int i = 0; i < 100; i++) {
            playOnePeriod();
        }
        assertEquals(Seen.FED, look());
    }

    @Test
    void aDeviceThatTakesNothingForLongerThanItHoldsIsDryOnce() {
        playOnePeriod();
        for (int i = 0; i < 20; i++) {
            nanos += LOOK_NANOS;
            latencySeconds = Math.max(0.001, latencySeconds - 0.005);
            look();
        }
        assertEquals(Seen.DRY, look());
        assertEquals(1, watch.gaps());
        handed += PERIOD_FRAMES;
        latencySeconds = 0.06;
        assertEquals(Seen.FED, look());
    }

    @Test
    void aLatencyThatIsNotKnownYetIsNoGap() {
        watch.opened(nanos);
        latencySeconds = 0;
        for (int i = 0; i < 100; i++) {
            assertEquals(Seen.FED, look());
            nanos += 4 * LOOK_NANOS;
            handed += PERIOD_FRAMES;
        }
    }

    @Test
    void aLatencyThatFallsToNothingIsAGap() {
        playOnePeriod();
        look();
        nanos += LOOK_NANOS;
        latencySeconds = 0;
        assertEquals(Seen.DRY, look());
    }

    @Test
    void afterAStandstillOfTheServerTheDeviceRaces() {
        playOnePeriod();
        look();
        long before = handed;
        for (int i = 0; i < 1_000; i++) {
            nanos += LOOK_NANOS;
            latencySeconds = 0;
            look();
        }
        nanos += LOOK_NANOS;
        handed += RATE.framesIn(0.15);
        assertEquals(Seen.RACED, look());
        assertEquals(before, watch.handedFrame());
        assertEquals(1, watch.gaps());
    }

    @Test
    void afterAStandstillOfTheProgramNothingWasHeard() {
        playOnePeriod();
        look();
        long before = handed;
        nanos += 5_000_000_000L;
        handed += RATE.framesIn(0.02);
        assertEquals(Seen.RACED, look());
        assertEquals(before, watch.handedFrame());
    }

    @Test
    void aThreadThatCameLateDoesNotRace() {
        playOnePeriod();
        look();
        nanos += 150_000_000;
        handed += RATE.framesIn(0.15);
        assertEquals(Seen.FED, look());
    }
}
