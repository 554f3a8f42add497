package cuelead.output;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** A device that holds 60 ms and takes 20 ms at a time: what it says falls from 60 to 40 ms and rises again. */
class HeldTimeTest {
    private static final long LOOK_NANOS = 5_000_000;
    private static final double USUAL_SECONDS = 0.05;
    /** What the library says until the server has answered: a count of frames, taken for microseconds. */
    private static final double MADE_UP_SECONDS = 0.00192;

    private final HeldTime held = new HeldTime(USUAL_SECONDS, 0);
    private long nanos;

    private double after(double saidSeconds) {
        nanos += LOOK_NANOS;
        return held.after(saidSeconds, nanos);
    }

    private void play(int periods, double leastSeconds) {
        for (int i = 0; i < 4 * periods; i++) {
            double said = leastSeconds + 0.005 * (4 - i % 4);
            assertEquals(said, after(said), 1e-12);
        }
    }

    @Test
    void whatIsMadeUpIsNotBelieved() {
        for (int i = 0; i < 400; i++) {
            assertEquals(USUAL_SECONDS, after(MADE_UP_SECONDS), 1e-12);
        }
        for (int i = 0; i < 39; i++) {
            assertEquals(USUAL_SECONDS, after(0.005), 1e-12, "the first true numbers are wild");
        }
        after(0.005);
        play(5, 0.04);
        assertEquals(0.003, after(0.003), 1e-12, "later the device is believed");
    }

    /** A sound server that was restarted says nothing for some seconds, then first too little. */
    @Test
    void afterSilenceTheFirstNumbersAreWild() {
        after(MADE_UP_SECONDS);
        for (int i = 0; i < 800; i++) {
            assertEquals(USUAL_SECONDS, after(0), 1e-12);
        }
        assertEquals(USUAL_SECONDS, after(0.01859), 1e-12);
        assertEquals(USUAL_SECONDS, after(0.03859), 1e-12);
        nanos += 200_000_000;
        play(5, 0.04);
    }

    @Test
    void aDeviceThatAlwaysSaysTheSameIsBelievedInTheEnd() {
        double last = 0;
        for (int i = 0; i < 700; i++) {
            last = after(0.01);
        }
        assertEquals(0.01, last, 1e-12);
    }

    @Test
    void aLongTimeIsBelievedAtOnceThoughItStaysTheSame() {
        assertEquals(0.2, after(0.2), 1e-12);
        assertEquals(0.2, after(0.2), 1e-12);
    }

    @Test
    void whatIsUsualIsLearntAndTakenWhereNothingIsSaid() {
        play(200, 0.1);
        assertEquals(0.1125, after(0), 0.002);
        held.opened(nanos);
        assertEquals(0.1125, after(MADE_UP_SECONDS), 0.002);
    }

    @Test
    void afterAStandstillTheUsualTimeIsTakenForAWhile() {
        play(200, 0.04);
        held.stoodStill(nanos);
        for (int i = 0; i < 1_590; i++) {
            assertEquals(0.0525, after(0.13), 0.002);
        }
        nanos += 100_000_000;
        play(5, 0.04);
    }
}
