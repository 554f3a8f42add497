package cuelead.compose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.time.BeatPosition;
import java.util.ArrayList;
import java.util.List;
import javax.sound.midi.MidiEvent;
import javax.sound.midi.Sequence;
import javax.sound.midi.ShortMessage;
import javax.sound.midi.Track;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Tempo curve, beat file and MIDI tell the same times. */
class TempoLawTest {
    private static final double DRIFT = 0.03;

    private static Score drifting(int tempo, int seed) {
        return Scores.kicks(
                "metre: 4/4%ntempo: %d%ndrift: 3%%%nseed: %d"
                        .formatted(tempo, seed)
                        .replace("\r", ""),
                "x...x...x...x...");
    }

    @Property(tries = 60, seed = "20261125")
    void theTempoStaysWithinItsDrift(
            @ForAll @IntRange(min = 60, max = 200) int tempo, @ForAll @IntRange(max = 10_000) int seed) {
        Score score = drifting(tempo, seed);
        Arrangement arrangement = Arranger.arrange(score);
        TempoCurve curve = TempoCurve.of(score.header(), arrangement);
        for (int beat = 0; beat < 64; beat++) {
            double seconds = curve.secondsOfBeat(beat + 1) - curve.secondsOfBeat(beat);
            assertEquals(tempo, 60 / seconds, DRIFT * tempo * (1 + 1e-9), "beat " + beat);
        }
    }

    /** The curve's closed form against Simpson's rule on its own tempos. */
    @Property(tries = 30, seed = "20261125")
    void secondsAreTheIntegralOfTheTempo(@ForAll @IntRange(max = 10_000) int seed) {
        Score score = drifting(116, seed);
        TempoCurve curve = TempoCurve.of(score.header(), Arranger.arrange(score));
        double sum = 0;
        for (int beat = 0; beat < 64; beat++) {
            double from = 60 / curve.beatsPerMinuteAt(BeatPosition.atBeat(beat));
            double middle = 60 / curve.beatsPerMinuteAt(new BeatPosition(beat * 960L + 480));
            double to = 60 / curve.beatsPerMinuteAt(new BeatPosition(beat * 960L + 959));
            sum += (from + 4 * middle + to) / 6;
            assertEquals(sum, curve.secondsOfBeat(beat + 1), 1e-3, "beat " + beat);
        }
    }

    @Test
    void everyKickOfTheMidiFallsOnItsBeat() {
        for (Score score : List.of(drifting(116, 23), Scores.kicks("metre: 3/4\ntempo: 90\nhuman: 0 ms", "x.x.x."))) {
            Arrangement arrangement = Arranger.arrange(score);
            Performance performance = Performer.perform(score, arrangement);
            List<Double> kicks = kickSeconds(MidiSong.of(score.band(), performance));
            List<Double> beats = fileSeconds(BeatSheet.text(score, arrangement, performance));
            assertEquals(beats.size(), kicks.size());
            for (int i = 0; i < beats.size(); i++) {
                assertEquals(beats.get(i), kicks.get(i), 0.001, "beat " + i);
            }
        }
    }

    @Test
    void peopleStrayButTheGridDoesNot() {
        Score even = Scores.kicks("metre: 4/4\ntempo: 100", "x...x...x...x...");
        Score human = Scores.kicks("metre: 4/4\ntempo: 100\nhuman: 20 ms", "x...x...x...x...");
        Performance exact = Performer.perform(even, Arranger.arrange(even));
        Performance strayed = Performer.perform(human, Arranger.arrange(human));
        assertEquals(exact.beats(), strayed.beats());
        double sum = 0;
        for (int i = 0; i < exact.notes().size(); i++) {
            double stray =
                    strayed.notes().get(i).startSeconds() - exact.notes().get(i).startSeconds();
            assertTrue(Math.abs(stray) <= 0.02, "note " + i + " strays by " + stray);
            sum += Math.abs(stray);
        }
        assertTrue(sum > 0, "nobody strays");
    }

    /** When each kick is heard: its tick, and the drum's own delay. */
    private static List<Double> kickSeconds(Sequence sequence) {
        List<Double> seconds = new ArrayList<>();
        double ticksPerSecond = sequence.getResolution() / 0.5;
        for (Track track : sequence.getTracks()) {
            for (int i = 0; i < track.size(); i++) {
                MidiEvent event = track.get(i);
                if (event.getMessage() instanceof ShortMessage note
                        && note.getCommand() == ShortMessage.NOTE_ON
                        && note.getData1() == 36) {
                    seconds.add(event.getTick() / ticksPerSecond + DrumSound.KICK.leadSeconds());
                }
            }
        }
        return seconds;
    }

    private static List<Double> fileSeconds(String beatFile) {
        return beatFile.lines()
                .filter(line -> !line.startsWith("#"))
                .map(line -> Double.parseDouble(line.split("\t")[0]))
                .toList();
    }
}
