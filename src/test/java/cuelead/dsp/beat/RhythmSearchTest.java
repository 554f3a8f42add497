package cuelead.dsp.beat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.dsp.beat.Rhythm.HeardBeat;
import java.util.Arrays;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class RhythmSearchTest {
    private static final RhythmSearch SEARCH = new RhythmSearch(BeatNetwork.load());
    private static final double[] EIGHTHS = {0.5};
    private static final double[] TRIPLETS = {1 / 3.0, 2 / 3.0};

    private static double[] even(double first, double seconds, int count) {
        double[] beats = new double[count];
        Arrays.setAll(beats, i -> first + i * seconds);
        return beats;
    }

    private static Optional<Rhythm> find(float[] samples) {
        return SEARCH.find(BandSpectrum.of(samples), done -> {});
    }

    private static Rhythm heard(MadeBand band) {
        return find(band.samples()).orElseThrow();
    }

    /** Each beat within 25 ms, none between them; the first and last may be missing. */
    private static void assertBeats(double[] exact, Rhythm heard) {
        int hits = 0;
        for (double seconds : exact) {
            hits += heard.beats().stream().anyMatch(beat -> Math.abs(beat.seconds() - seconds) < 0.025) ? 1 : 0;
        }
        assertTrue(hits >= exact.length - 2, hits + " of " + exact.length + " beats");
        assertTrue(heard.beats().size() <= exact.length + 2, heard.beats().size() + " beats for " + exact.length);
    }

    private static int inBarAt(double seconds, Rhythm rhythm) {
        return nearest(seconds, rhythm).beatInBar();
    }

    private static HeardBeat nearest(double seconds, Rhythm rhythm) {
        return rhythm.beats().stream()
                .min((a, b) -> Double.compare(Math.abs(a.seconds() - seconds), Math.abs(b.seconds() - seconds)))
                .orElseThrow();
    }

    @Test
    void anEvenBandIsHeardExactly() {
        double[] beats = even(0.7, 0.5, 64);
        Rhythm rhythm = heard(MadeBand.play(beats, 4, 0, EIGHTHS));
        assertBeats(beats, rhythm);
        assertEquals(4, rhythm.beatsPerBar());
        assertEquals(8, rhythm.phraseBeats());
        for (int bar = 2; bar < 14; bar++) {
            assertEquals(1, inBarAt(beats[4 * bar], rhythm), "bar " + bar);
        }
    }

    /** The counts go on without a break, and the first of an eight is the first of a bar. */
    @Test
    void countsFollowEachOther() {
        Rhythm rhythm = heard(MadeBand.play(even(0.7, 0.5, 64), 4, 0, EIGHTHS));
        for (int i = 1; i < rhythm.beats().size(); i++) {
            int before = rhythm.beats().get(i - 1).countInPhrase();
            assertEquals(before % 8 + 1, rhythm.beats().get(i).countInPhrase(), "beat " + i);
        }
    }

    /** From 112 to 124 beats a minute, as an eager band does. */
    @Test
    void aDriftingBandIsFollowed() {
        double[] beats = new double[64];
        beats[0] = 0.6;
        for (int i = 1; i < beats.length; i++) {
            beats[i] = beats[i - 1] + 60 / (112 + 12.0 * i / beats.length);
        }
        assertBeats(beats, heard(MadeBand.play(beats, 4, 0, EIGHTHS)));
    }

    @Test
    void aWaltzHasThree() {
        double[] beats = even(0.7, 0.52, 60);
        Rhythm rhythm = heard(MadeBand.play(beats, 3, 0, EIGHTHS));
        assertBeats(beats, rhythm);
        assertEquals(3, rhythm.beatsPerBar());
        assertEquals(6, rhythm.phraseBeats());
        assertEquals(1, inBarAt(beats[30], rhythm));
    }

    /** Six-eight is counted at its felt beat, the dotted quarter. */
    @Test
    void sixEightIsHeardAtItsFeltBeat() {
        double[] beats = even(0.7, 0.6, 48);
        Rhythm rhythm = heard(MadeBand.play(beats, 2, 0, TRIPLETS));
        assertBeats(beats, rhythm);
        assertTrue(rhythm.beatsPerBar() != 3, "bars of " + rhythm.beatsPerBar());
    }

    @Test
    void swingStaysOnTheBeat() {
        double[] beats = even(0.7, 0.46, 64);
        assertBeats(beats, heard(MadeBand.play(beats, 4, 0, 2 / 3.0)));
    }

    @Test
    void aPickupIsNoFirstBeat() {
        double[] beats = even(0.7, 0.5, 66);
        Rhythm rhythm = heard(MadeBand.play(beats, 4, 2, EIGHTHS));
        assertBeats(beats, rhythm);
        for (int bar = 2; bar < 14; bar++) {
            assertEquals(1, inBarAt(beats[2 + 4 * bar], rhythm), "bar " + bar);
        }
    }

    @Test
    void whatHasNoBeatGetsNone() {
        assertTrue(find(new float[0]).isEmpty(), "an empty file");
        assertTrue(find(new float[22_050 * 20]).isEmpty(), "silence");
        assertTrue(find(noise(20)).isEmpty(), "noise");
        assertTrue(
                find(MadeBand.play(even(0.5, 0.5, 5), 4, 0, EIGHTHS).samples()).isEmpty(), "three seconds");
    }

    private static float[] noise(int seconds) {
        Random random = new Random(1);
        float[] samples = new float[22_050 * seconds];
        for (int i = 0; i < samples.length; i++) {
            samples[i] = (float) (0.3 * random.nextGaussian());
        }
        return samples;
    }
}
