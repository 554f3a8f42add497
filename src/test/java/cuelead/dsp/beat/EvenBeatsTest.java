package cuelead.dsp.beat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.dsp.beat.BarPath.PathBeat;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.IntToDoubleFunction;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** Rows of beats whose true times are known exactly. */
class EvenBeatsTest {
    private static final int BEATS = 120;
    private static final double STRAY_SECONDS = 0.012;

    private static List<PathBeat> row(IntToDoubleFunction seconds) {
        List<PathBeat> beats = new ArrayList<>();
        for (int i = 0; i < BEATS; i++) {
            beats.add(new PathBeat(seconds.applyAsDouble(i), i % 4 + 1, 0.5, 10));
        }
        return beats;
    }

    private static double meanOff(List<PathBeat> beats, IntToDoubleFunction seconds) {
        double sum = 0;
        for (int i = 0; i < beats.size(); i++) {
            sum += Math.abs(beats.get(i).seconds() - seconds.applyAsDouble(i));
        }
        return sum / beats.size();
    }

    private static double slowingDown(int beat) {
        return 1 + 0.5 * beat + 0.0004 * beat * beat;
    }

    /** Beat 60 comes late, and all after it. */
    private static double withPause(int beat) {
        return 0.5 * beat + (beat < 60 ? 0 : 0.37);
    }

    @Property
    void evenBeatsStay(@ForAll @DoubleRange(min = 0.25, max = 1.3) double beatSeconds) {
        IntToDoubleFunction even = i -> 3 + i * beatSeconds;
        assertEquals(0, meanOff(EvenBeats.of(row(even)), even), 1e-9);
    }

    @Test
    void beatsThatStrayComeNearer() {
        Random random = new Random(7);
        List<PathBeat> heard = row(i -> slowingDown(i) + STRAY_SECONDS * random.nextGaussian());
        double before = meanOff(heard, EvenBeatsTest::slowingDown);
        double after = meanOff(EvenBeats.of(heard), EvenBeatsTest::slowingDown);
        assertTrue(after < 0.7 * before, after + " of " + before);
    }

    @Test
    void beatsOnEitherSideOfAPauseStay() {
        assertEquals(0, meanOff(EvenBeats.of(row(EvenBeatsTest::withPause)), EvenBeatsTest::withPause), 0.002);
    }

    @Test
    void oneBeatFarOffDoesNotDrawItsNeighbours() {
        List<PathBeat> evened = EvenBeats.of(row(i -> 0.5 * i + (i == 60 ? 0.2 : 0)));
        assertEquals(30.2, evened.get(60).seconds(), 1e-9);
        assertEquals(29.5, evened.get(59).seconds(), 0.001);
    }

    @Test
    void aBeatAloneStays() {
        List<PathBeat> alone = List.of(new PathBeat(2, 1, 0.5, 10));
        assertEquals(alone, EvenBeats.of(alone));
    }
}
