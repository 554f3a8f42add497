package cuelead.song;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.dsp.beat.Taps;
import cuelead.report.Refused;
import cuelead.song.Hearing.Stretch;
import cuelead.song.Tapped.Carried;
import cuelead.time.BeatGrid;
import cuelead.time.Tempo;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Taps on the demo song, whose exact beats were written when it was composed. */
class TappedTest {
    private static final Path SONG = Path.of("demo-songs", "lamp-on-the-quay.mp3");
    private static final Ear EAR = new Ear();
    /** People tap so much early, and scatter so much (Repp 2005, see {@link Taps}). */
    private static final double EARLY_SECONDS = 0.03;

    private static final double SCATTER_SECONDS = 0.02;

    @TempDir
    private static Path folder;

    private static BeatGrid exact() throws Refused {
        return BeatFile.read(BeatFile.beside(SONG)).beats().orElseThrow();
    }

    /** Sixteen taps on every so many beats. */
    private static Taps taps(BeatGrid beats, int firstBeat, int every) {
        Random random = new Random(11);
        double[] seconds = new double[16];
        for (int i = 0; i < seconds.length; i++) {
            seconds[i] =
                    beats.beatSeconds(firstBeat + every * i) - EARLY_SECONDS + SCATTER_SECONDS * random.nextGaussian();
        }
        return new Taps(seconds);
    }

    /** Ways in which the ear may have counted wrongly. */
    static List<List<Correction>> wrongWays() {
        return List.of(
                List.of(),
                List.of(Correction.TWICE),
                List.of(Correction.HALF),
                List.of(Correction.COUNT_LATER, Correction.HALF),
                List.of(Correction.HALF_BEAT),
                List.of(Correction.THREE_FOR_TWO),
                List.of(Correction.TWO_FOR_THREE),
                List.of(Correction.COUNT_LATER, Correction.COUNT_LATER, Correction.COUNT_LATER));
    }

    @ParameterizedTest
    @MethodSource("wrongWays")
    void tapsSayHowTheSongIsCountedFromEndToEnd(List<Correction> wrong) throws Exception {
        BeatGrid exact = exact();
        BeatGrid heard = exact;
        for (Correction way : wrong) {
            heard = way.apply(heard, Optional.empty());
        }
        Tapped tapped = Tapped.through(taps(exact, 33, 1), heard, SONG, EAR);
        assertEquals(Carried.BY_HEARD_BEATS, tapped.carried());
        assertFollows(exact, tapped.beats(), 0.01);
        assertEquals(1, tapped.beats().countInPhrase(tapped.beats().nearestBeat(exact.beatSeconds(33))));
    }

    @Test
    void aSongThatWasHeardWronglyIsHeardAgainAtTheTappedTempo() throws Exception {
        BeatGrid exact = exact();
        double seconds = exact.beatSeconds(exact.size() - 1);
        BeatGrid wrong = BeatGrid.steady(new Tempo(91), 0.1, (int) (seconds * 91 / 60), 4);
        Tapped tapped = Tapped.through(taps(exact, 48, 1), wrong, SONG, EAR);
        assertEquals(Carried.BY_LISTENING_AGAIN, tapped.carried());
        assertFollows(exact, tapped.beats(), 0.025);
    }

    @Test
    void whereNothingIsHeardTheTempoGoesOnEvenly() throws Exception {
        Path quiet = Sounds.file(folder, "tone.wav", Sounds.wav(22_050, 1, 22_050 * 40));
        BeatGrid even = BeatGrid.steady(new Tempo(110), 0, 72, 4);
        double[] seconds = new double[10];
        for (int i = 0; i < seconds.length; i++) {
            seconds[i] = 10 + 0.75 * i;
        }
        Tapped tapped = Tapped.through(new Taps(seconds), even, quiet, EAR);
        BeatGrid beats = tapped.beats();
        assertEquals(80, beats.medianTempo().beatsPerMinute(), 1.5);
        assertEquals(1, beats.beatInBar(beats.nearestBeat(10)));
        assertTrue(beats.beatSeconds(0) < 1 && beats.beatSeconds(beats.size() - 1) > 37);
    }

    @Test
    void withinAStretchTheOthersStay() throws Exception {
        BeatGrid exact = exact();
        BeatGrid heard = Correction.HALF_BEAT.apply(exact, Optional.empty());
        Stretch stretch = new Stretch(exact.beatSeconds(30) - 0.1, exact.beatSeconds(60) + 0.1);
        Tapped tapped = Tapped.through(taps(exact, 33, 1), heard, SONG, EAR);
        BeatGrid mended = tapped.within(heard, Optional.of(stretch));
        assertEquals(heard.beatSeconds(10), mended.beatSeconds(10), 1e-9);
        assertEquals(exact.beatSeconds(45), mended.beatSeconds(mended.nearestBeat(exact.beatSeconds(45))), 1e-3);
        assertTrue(tapped.comment(Optional.of(stretch)).startsWith(" corrected: tapped from "));
    }

    private static void assertFollows(BeatGrid exact, BeatGrid beats, double toleranceSeconds) {
        int hits = 0;
        for (int i = 0; i < exact.size(); i++) {
            double off = beats.beatSeconds(beats.nearestBeat(exact.beatSeconds(i))) - exact.beatSeconds(i);
            hits += Math.abs(off) <= toleranceSeconds ? 1 : 0;
        }
        assertTrue(hits >= exact.size() - 4, hits + " of " + exact.size() + " beats");
        assertEquals(exact.size(), beats.size(), 6);
    }
}
