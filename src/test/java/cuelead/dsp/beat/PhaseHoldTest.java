package cuelead.dsp.beat;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.dsp.beat.BarPath.PathBeat;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Rows of beats over a bass drum whose strokes are known exactly. */
class PhaseHoldTest {
    private static final double BEAT_SECONDS = 0.5;
    private static final int BEATS = 96;
    private static final int STROKE_SAMPLES = 2_000;

    private static List<Double> even(double first, int count) {
        List<Double> times = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            times.add(first + i * BEAT_SECONDS);
        }
        return times;
    }

    private static List<Double> joined(List<Double> first, List<Double> then) {
        List<Double> all = new ArrayList<>(first);
        all.addAll(then);
        return all;
    }

    private static Onsets bass(List<Double> strokes) {
        int rate = BandSpectrum.RATE.hz();
        float[] samples = new float[(int) ((BEATS + 4) * BEAT_SECONDS * rate)];
        for (double stroke : strokes) {
            int start = (int) Math.round(stroke * rate);
            for (int i = 0; i < STROKE_SAMPLES; i++) {
                double seconds = (double) i / rate;
                samples[start + i] += (float) (Math.sin(2 * Math.PI * 55 * seconds) * Math.exp(-seconds / 0.04));
            }
        }
        return Onsets.of(BandSpectrum.of(samples).loudness(), 0, Onsets.LOW_BANDS);
    }

    private static List<PathBeat> path(List<Double> times) {
        return times.stream().map(t -> new PathBeat(t, 1, BEAT_SECONDS, 10)).toList();
    }

    private static List<Double> held(List<Double> heard, List<Double> strokes) {
        return held(heard, bass(strokes), bass(strokes));
    }

    private static List<Double> held(List<Double> heard, Onsets bass, Onsets cymbals) {
        return PhaseHold.hold(path(heard), bass, cymbals).stream()
                .map(PathBeat::seconds)
                .toList();
    }

    private static void assertAllOn(List<Double> strokes, List<Double> held) {
        for (double beat : held) {
            double off =
                    strokes.stream().mapToDouble(s -> Math.abs(s - beat)).min().orElseThrow();
            assertEquals(0, off, 0.001, "at " + beat);
        }
        assertEquals(strokes.size(), held.size(), 2, "beats");
    }

    @Test
    void aSectionOnTheOffBeatIsMovedToWhereTheBassIs() {
        List<Double> strokes = even(1, BEATS);
        List<Double> heard = joined(even(1, 60), even(1 + 60.5 * BEAT_SECONDS, 35));
        assertAllOn(strokes, held(heard, strokes));
    }

    @Test
    void aSectionOnTheLastTripletIsMovedToWhereTheBassIs() {
        List<Double> strokes = even(1, BEATS);
        List<Double> heard = joined(even(1, 60), even(1 + (60 + 2 / 3.0) * BEAT_SECONDS, 35));
        assertAllOn(strokes, held(heard, strokes));
    }

    /** All that sounds in a section without drums lies between the beats, its bass too. */
    @Test
    void aSectionWithoutDrumsIsMovedToWhereTheOthersAre() {
        List<Double> heard = joined(even(1, 60), even(1 + 60.5 * BEAT_SECONDS, 35));
        assertAllOn(even(1, BEATS), held(heard, bass(heard), bass(even(1, 60))));
    }

    /** The band itself waits a little: what follows it is where its bass is. */
    @Test
    void aPauseOfTheBandIsFollowed() {
        List<Double> strokes = joined(even(1, 50), even(1 + 50.4 * BEAT_SECONDS, 40));
        assertAllOn(strokes, held(strokes, strokes));
    }
}
