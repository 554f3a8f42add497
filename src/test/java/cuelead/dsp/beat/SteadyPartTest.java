package cuelead.dsp.beat;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.dsp.beat.BarPath.PathBeat;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The supports are those measured on made songs at these tempi. */
class SteadyPartTest {
    private static final double WANDERING = 0.07;

    @Test
    void aFastSongNeedsLessSupportABeat() {
        assertEquals(80, SteadyPart.longest(PathBeats.even(60 / 182.0, 80, 5.9)).size());
    }

    @Test
    void atMiddlingTempiSoLittleSupportIsNoBeat() {
        assertEquals(0, SteadyPart.longest(wandering(60 / 120.0, 5.9)).size());
    }

    @Test
    void noiseIsNoBeatAtAnyTempo() {
        for (double tempo = 60; tempo < 210; tempo += 10) {
            assertEquals(0, SteadyPart.longest(wandering(60 / tempo, 5)).size());
            assertEquals(
                    0, SteadyPart.longest(PathBeats.even(60 / tempo, 80, 2)).size());
        }
    }

    @Test
    void beatsHeardSoftlyAreBeatsWhereTheTempoIsEven() {
        assertEquals(80, SteadyPart.longest(PathBeats.even(60 / 120.0, 80, 5)).size());
    }

    /** Beats whose tempo goes up and down by a few per cent, as it does in noise. */
    private static List<PathBeat> wandering(double beatSeconds, double support) {
        List<PathBeat> beats = new ArrayList<>();
        double seconds = 0;
        for (int i = 0; i < 80; i++) {
            double length = beatSeconds * (1 + WANDERING * Math.sin(i));
            beats.add(new PathBeat(seconds, 1, length, support));
            seconds += length;
        }
        return beats;
    }

    @Test
    void wherePlayedSoftlyAPartGoesOnAtItsTempoAfterAHole() {
        List<PathBeat> beats = PathBeats.even(0.4, 60, 11);
        beats = with(beats, 0.55, 20, -8);
        assertEquals(180, SteadyPart.longest(with(beats, 0.4, 100, 5)).size());
    }

    @Test
    void softBeatsAtAnotherTempoAreNoPartOfIt() {
        List<PathBeat> beats = PathBeats.even(0.4, 60, 11);
        beats = with(beats, 0.55, 20, -8);
        assertEquals(60, SteadyPart.longest(with(beats, 0.5, 100, 5)).size());
    }

    @Test
    void anEndingWhoseTempoComesBackIsPartOfIt() {
        List<PathBeat> lost = with(PathBeats.even(0.4, 60, 11), 0.46, 6, -4);
        assertEquals(126, SteadyPart.longest(with(lost, 0.4, 60, 3.1)).size());
    }

    @Test
    void talkAfterTheMusicIsNoPartOfIt() {
        List<PathBeat> lost = with(PathBeats.even(0.4, 60, 11), 0.46, 6, -4);
        assertEquals(60, SteadyPart.longest(with(lost, 0.4, 60, -2.8)).size());
    }

    /** Beats with others after them. */
    private static List<PathBeat> with(List<PathBeat> beats, double beatSeconds, int count, double support) {
        List<PathBeat> all = new ArrayList<>(beats);
        PathBeat last = beats.get(beats.size() - 1);
        for (PathBeat beat : PathBeats.even(beatSeconds, count, support)) {
            double seconds = last.seconds() + last.lengthSeconds() + beat.seconds();
            all.add(new PathBeat(seconds, beat.beatInBar(), beatSeconds, support));
        }
        return all;
    }
}
