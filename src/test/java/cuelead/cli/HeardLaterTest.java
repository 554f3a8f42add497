package cuelead.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import cuelead.plan.Timeline;
import cuelead.practice.Heard;
import org.junit.jupiter.api.Test;

/** Looks every 0.05 s at a song that plays from its second 10, seen 0.2 s later. */
class HeardLaterTest {
    private static final double EXACT = 1e-9;
    private static final Timeline TIMELINE = Calls.timeline(30);
    private final HeardLater later = new HeardLater(0.2);

    private static Heard heard(int version, double songSeconds) {
        Heard any = Calls.moment(TIMELINE, songSeconds).heard();
        return new Heard(version, songSeconds, any.timeline(), any.calls(), any.settings(), any.repeating(), any.aim());
    }

    @Test
    void itIsSeenAsMuchLaterAsItSounds() {
        for (int look = 0; look < 20; look++) {
            double now = 100 + look * 0.05;
            assertEquals(
                    9.8 + look * 0.05, later.at(now, heard(1, 10 + look * 0.05)).songSeconds(), EXACT);
        }
        assertEquals(10.77, later.at(100.97, heard(1, 10.97)).songSeconds(), EXACT);
    }

    @Test
    void aJumpIsSeenWhenItIsHeardAndNotOnTheWay() {
        later.at(100, heard(1, 10));
        later.at(100.05, heard(2, 50));
        later.at(100.1, heard(2, 50.05));
        assertEquals(10, later.at(100.22, heard(2, 50.17)).songSeconds(), EXACT);
        assertEquals(50.03, later.at(100.28, heard(2, 50.23)).songSeconds(), EXACT);
    }

    @Test
    void aPauseIsSeenWhereItWasMade() {
        for (int look = 0; look < 20; look++) {
            later.at(100 + look * 0.05, heard(1, 10));
        }
        assertEquals(10, later.at(101, heard(1, 10)).songSeconds(), EXACT);
    }

    @Test
    void withoutADelayNothingIsChanged() {
        Heard heard = heard(1, 10);
        assertSame(heard, new HeardLater(0).at(5, heard));
    }
}
