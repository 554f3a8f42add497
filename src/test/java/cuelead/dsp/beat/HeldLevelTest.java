package cuelead.dsp.beat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Tempi that dances have: common practice, no source. */
class HeldLevelTest {
    private static final int FRAMES = 1500;

    /** A beat each so many frames, and so much of one halfway between. */
    private static Activations pulse(int frames, float halfway) {
        float[] beat = new float[FRAMES];
        for (int i = 0; i < beat.length; i++) {
            beat[i] = i % frames == 0 ? 0.9f : i % frames == frames / 2 ? halfway : 0.02f;
        }
        float[] downbeat = new float[FRAMES];
        for (int i = 0; i < beat.length; i += 2 * frames) {
            downbeat[i] = 0.9f;
        }
        return new Activations(beat, downbeat, new float[FRAMES]);
    }

    private static double beatSeconds(BarPath path) {
        return path.beats().get(10).seconds() - path.beats().get(9).seconds();
    }

    private static BarPath likeliest(double middleTempo, Activations heard) {
        HeldLevel level = HeldLevel.of(path(middleTempo, 100));
        HeldLevel.TempoSearch paths = (slowest, fastest) -> BarPointer.search(heard, 2, slowest, fastest);
        return level.likeliest(new LevelOdds(heard, new float[74][FRAMES]), level.middle(paths), paths);
    }

    @Test
    void twiceAsManyBeatsAreHeardWhereTheyAre() {
        assertEquals(0.38, beatSeconds(likeliest(79, pulse(19, 0.02f))), 0.02);
    }

    @Test
    void halfAsManyBeatsAreHeardWhereNoneAreBetween() {
        assertEquals(0.8, beatSeconds(likeliest(150, pulse(40, 0.02f))), 0.02);
    }

    @Test
    void softBeatsHalfwayDoNotMakeTwiceAsMany() {
        assertEquals(0.56, beatSeconds(likeliest(107, pulse(28, 0.2f))), 0.02);
    }

    @Test
    void aSteadyPathIsKeptAndOneThatJumpsIsNot() {
        List<BarPath.PathBeat> even = PathBeats.even(0.5, 40, 8);
        BarPath jumping = new BarPath(
                4,
                100,
                Stream.concat(even.stream(), PathBeats.even(0.25, 20, 8).stream())
                        .toList());
        assertEquals(HeldLevel.Keeping.KEPT, HeldLevel.of(path(120, 1)).keepingOf(path(120, 1)));
        assertEquals(HeldLevel.Keeping.JUMPS, HeldLevel.of(jumping).keepingOf(jumping));
    }

    @Test
    void oneLevelMustFitNearlyAsWellAsAPathThatWanders() {
        assertTrue(HeldLevel.isNearlyAsGood(path(156, 95), path(78, 100)));
        assertFalse(HeldLevel.isNearlyAsGood(path(156, 60), path(78, 100)));
    }

    @Test
    void aFasterLevelThatKeepsLessThanHalfOfTheBestScoreIsNone() {
        assertFalse(HeldLevel.isAnsweredTo(path(156, 45), path(78, 100)));
        assertTrue(HeldLevel.isAnsweredTo(path(156, 55), path(78, 100)));
        assertTrue(HeldLevel.isAnsweredTo(path(39, 5), path(78, 100)));
    }

    private static BarPath path(double tempo, double logScore) {
        return new BarPath(4, logScore, PathBeats.even(60 / tempo, 40, 8));
    }
}
