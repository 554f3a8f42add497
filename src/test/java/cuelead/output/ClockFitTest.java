package cuelead.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import cuelead.sound.HeardAt;
import cuelead.time.SampleRate;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class ClockFitTest {
    private static final SampleRate RATE = new SampleRate(48_000);
    private static final long BEGIN_NANOS = 6_000_000_000_000L;
    private static final long STEP_NANOS = 50_000_000;

    /** Ten seconds of readings that scatter by 1 ms to both sides. */
    private static List<HeardAt> readings(double aheadSeconds, double ppm, double scatterSeconds) {
        Random random = new Random(5);
        return IntStream.range(0, 200)
                .mapToObj(i -> {
                    long nanos = BEGIN_NANOS + i * STEP_NANOS + random.nextInt(10_000_000);
                    double seconds = aheadSeconds + (nanos - BEGIN_NANOS) / 1e9 * (1 + ppm / 1e6);
                    double scatter = scatterSeconds * (2 * random.nextDouble() - 1);
                    return new HeardAt(RATE.frameAt(seconds + scatter), nanos);
                })
                .toList();
    }

    @Property
    void offsetAndDriftAreFound(
            @ForAll @DoubleRange(min = -2, max = 2) double ahead,
            @ForAll @DoubleRange(min = -300, max = 300) double ppm) {
        ClockFit first = ClockFit.of(readings(5 + ahead, ppm, 0), RATE);
        ClockFit second = ClockFit.of(readings(5, 0, 0), RATE);
        assertEquals(ahead, first.aheadOf(second, BEGIN_NANOS), 0.00002);
        assertEquals(ahead + ppm * 60e-6, first.aheadOf(second, BEGIN_NANOS + 60_000_000_000L), 0.0003);
        assertEquals(ppm, first.driftPpm(second), 5);
    }

    @Test
    void scatterOfAMillisecondLeavesATenthOfIt() {
        ClockFit first = ClockFit.of(readings(5.02, 170, 0.001), RATE);
        ClockFit second = ClockFit.of(readings(5, 0, 0.001), RATE);
        long middle = BEGIN_NANOS + 100 * STEP_NANOS;
        assertEquals(0.02 + 5 * 170e-6, first.aheadOf(second, middle), 0.0002);
    }

    @Test
    void oneTimeOnlyIsNotEnough() {
        List<HeardAt> once = List.of(new HeardAt(5, 7), new HeardAt(6, 7));
        assertThrows(IllegalArgumentException.class, () -> ClockFit.of(once, RATE));
    }
}
