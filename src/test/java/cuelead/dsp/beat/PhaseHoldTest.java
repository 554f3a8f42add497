package cuelead.dsp.beat;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.dsp.beat.BarPath.PathBeat;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** Rows of beats over drums and chords whose strokes are known exactly. */
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

    /** A bass drum at some times and a high note at others, as loud; by band, then frame. */
    private static float[][] loudness(List<Double> drums, List<Double> chords) {
        int rate = BandSpectrum.RATE.hz();
        float[] samples = new float[(int) ((BEATS + 4) * BEAT_SECONDS * rate)];
        for (double drum : drums) {
            add(samples, drum, seconds -> Math.sin(2 * Math.PI * 55 * seconds));
        }
        for (double chord : chords) {
            add(samples, chord, seconds -> Math.sin(2 * Math.PI * 1_760 * seconds));
        }
        return BandSpectrum.of(samples).loudness();
    }

    private static void add(float[] samples, double at, DoubleUnaryOperator wave) {
        int start = (int) Math.round(at * BandSpectrum.RATE.hz());
        for (int i = 0; i < STROKE_SAMPLES; i++) {
            double seconds = (double) i / BandSpectrum.RATE.hz();
            samples[start + i] += (float) (wave.applyAsDouble(seconds) * Math.exp(-seconds / 0.04));
        }
    }

    private static List<PathBeat> path(List<Double> times) {
        return times.stream().map(t -> new PathBeat(t, 1, BEAT_SECONDS, 10)).toList();
    }

    private static List<Double> held(List<Double> heard, List<Double> drums) {
        return held(heard, drums, List.of());
    }

    private static List<Double> held(List<Double> heard, List<Double> drums, List<Double> chords) {
        return PhaseHold.hold(path(heard), loudness(drums, chords)).stream()
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

    /** Drum on the beat, chord between the beats, and at the end the chords alone: there a search takes them for the beat. */
    @Test
    void aSectionWithoutDrumsIsMovedToWhereTheOthersAre() {
        List<Double> between = even(1 + 0.5 * BEAT_SECONDS, BEATS - 1);
        List<Double> heard = joined(even(1, 60), even(1 + 60.5 * BEAT_SECONDS, 35));
        assertAllOn(even(1, BEATS), held(heard, even(1, 60), between));
    }

    /** After a pause nearly half a beat too long the band is between the beats of before, but its drum is still on the beat. */
    @Test
    void aPauseThatEndsBetweenTheBeatsIsFollowed() {
        List<Double> drums = joined(even(1, 50), even(1 + 50.45 * BEAT_SECONDS, 40));
        List<Double> chords = drums.stream().map(t -> t + BEAT_SECONDS / 2).toList();
        assertAllOn(drums, held(drums, drums, chords));
    }

    /** The band itself waits a little: what follows it is where its bass is. */
    @Test
    void aPauseOfTheBandIsFollowed() {
        List<Double> strokes = joined(even(1, 50), even(1 + 50.4 * BEAT_SECONDS, 40));
        assertAllOn(strokes, held(strokes, strokes));
    }
}
