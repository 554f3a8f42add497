package cuelead.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.sound.Dip.Point;
import cuelead.time.SampleRate;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class DipTest {
    private static final SampleRate RATE = new SampleRate(1_000 * 10);

    /** A clip of 0.5 s of which 0.1 s at either end is silent: audible for 0.3 s. */
    private static PlacedClip clip(long audibleStartFrame) {
        return new PlacedClip(audibleStartFrame - 1_000, new float[5_000], 1_000, 4_000, 0);
    }

    @Test
    void theMusicIsDownInTimeAndComesBackSlowly() {
        Dip dip = Dip.under(List.of(clip(20_000)), 10, RATE);
        assertEquals(
                List.of(new Point(19_500, 0), new Point(19_900, -10), new Point(23_000, -10), new Point(25_500, 0)),
                dip.points());
    }

    @Test
    void betweenBreakPointsTheLineIsStraightInDecibels() {
        Dip dip = Dip.under(List.of(clip(20_000)), 10, RATE);
        assertEquals(0, dip.dbAt(0));
        assertEquals(0, dip.dbAt(19_500));
        assertEquals(-2.5, dip.dbAt(19_600), 1e-12);
        assertEquals(-10, dip.dbAt(19_900), 1e-12);
        assertEquals(-10, dip.dbAt(22_999), 1e-12);
        assertEquals(-10, dip.dbAt(23_000), 1e-12);
        assertEquals(-6, dip.dbAt(24_000), 1e-12);
        assertEquals(0, dip.dbAt(25_500));
        assertEquals(0, dip.dbAt(1_000_000));
    }

    @Test
    void aGapUnderASecondIsHeld() {
        assertEquals(
                4,
                Dip.under(List.of(clip(20_000), clip(32_999)), 10, RATE)
                        .points()
                        .size());
        assertEquals(
                8,
                Dip.under(List.of(clip(20_000), clip(33_000)), 10, RATE)
                        .points()
                        .size());
    }

    @Test
    void aShortCallInsideALongOneEndsNothing() {
        PlacedClip longer = PlacedClip.whole(0, new float[30_000]);
        PlacedClip shorter = PlacedClip.whole(10_000, new float[100]);
        Dip dip = Dip.under(List.of(shorter, longer), 10, RATE);
        assertEquals(new Point(30_000, -10), dip.points().get(2));
    }

    @Test
    void noDepthIsNoDip() {
        assertEquals(List.of(), Dip.under(List.of(clip(0)), 0, RATE).points());
    }

    @Property(tries = 60, seed = "20261125")
    void theGainOfEveryFrameIsThatOfTheLine(
            @ForAll @IntRange(min = 0, max = 30_000) int firstFrame,
            @ForAll @IntRange(min = 1, max = 20_000) int frames) {
        List<PlacedClip> clips = new ArrayList<>(List.of(clip(12_000), clip(18_000), clip(31_000)));
        Dip dip = Dip.under(clips, 12, RATE);
        float[] gains = new float[frames];
        dip.gains(gains, frames, firstFrame, 0.5);
        double power = 0;
        for (int i = 0; i < frames; i++) {
            double expected = 0.5 * Math.pow(10, dip.dbAt(firstFrame + i) / 20);
            assertEquals(expected, gains[i], 1e-6);
            power += 4 * expected * expected;
        }
        assertEquals(power / frames, dip.meanPowerGain(firstFrame, firstFrame + frames), 0.01);
    }
}
