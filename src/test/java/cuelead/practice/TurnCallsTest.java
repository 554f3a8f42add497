package cuelead.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.dance.CountOne;
import cuelead.dance.CountRate;
import cuelead.dance.Dance;
import cuelead.plan.Call;
import cuelead.plan.CallLevel;
import cuelead.plan.CallPlan;
import cuelead.plan.CallSettings;
import cuelead.plan.Laying;
import cuelead.plan.Timeline;
import cuelead.plan.WordTimes;
import cuelead.sheet.SheetReader;
import cuelead.time.BeatGrid;
import cuelead.time.Beats;
import cuelead.time.Tempo;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How turns are called: to the side that is danced, near their count, and once. */
class TurnCallsTest {
    private static final WordTimes BY_LETTERS =
            words -> Optional.of(new WordTimes.Length(0.12, Math.max(0.2, 0.06 * words.length())));

    /** The expected calls are those of the trade: "step, quarter left", "half shuffle left" (common practice). */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1-2 Step R fwd, pivot 1/4 L|step, quarter left",
                "1-2 Step L fwd, pivot 1/4 R|step, quarter right",
                "1-2 Step R fwd, pivot 1/2 L|step, half left",
                "1&2 Shuffle 1/2 turn L stepping R, L, R|half shuffle left",
                "1&2 R sailor 1/4 R|sailor quarter right",
                "1-2 Cross R over L, turn 1/4 R stepping L back|cross, quarter right",
            })
    void aTurnIsCalledToItsSide(String line, String calls) {
        String sheet = "[1-8]\n" + line + "\n3-4 Hold, hold\n5-8 Hold, hold, hold, hold\n";
        List<String> said = calls(sheet, CallLevel.WORDS).stream()
                .filter(call -> call.count().orElseThrow().number() <= 2)
                .map(Call::words)
                .toList();
        assertEquals(calls, String.join(", ", said));
    }

    @Test
    void aFigureIsNamedWithItsTurn() {
        List<String> words =
                calls("""
                [1-8]
                1-4 Walk R, L, R, touch L beside R
                5-8 L jazz box 1/4 L
                """, CallLevel.WORDS).stream().map(Call::words).toList();
        assertTrue(words.contains("jazz box quarter left"), words.toString());
        assertFalse(words.contains("quarter left"), words.toString());
    }

    /** Before a crowded end of a wall, turns are called near their counts all the same. */
    @ParameterizedTest
    @CsvSource({"WORDS, 116", "FIGURES, 116", "WORDS, 140", "FIGURES, 140"})
    void noTurnIsCalledLongBeforeItIsDanced(CallLevel level, double bpm) {
        List<Call> calls = calls("""
                [1-8]
                1-2 Step R fwd, pivot 1/4 L
                3-4 Step R fwd, pivot 1/2 L
                5-6 Point R to R side, turn 1/2 R closing R beside L
                7-8 Point L to L side, turn 1/4 L closing L beside R
                Restart: on wall 2 after count 4
                """, level, bpm);
        for (Call call : calls) {
            boolean turns = call.kind() == Call.Kind.FIGURE && call.words().matches(".*(left|right).*");
            assertTrue(!turns || call.lead().compareTo(Beats.of(5)) < 0, call.toString());
        }
    }

    private static List<Call> calls(String lines, CallLevel level) {
        return calls(lines, level, 110);
    }

    /** Of the second wall: the first opens with a count-in. */
    private static List<Call> calls(String lines, CallLevel level, double bpm) {
        Dance dance = SheetReader.read("sheet.txt", "TURNS\n\n" + lines).dance().orElseThrow();
        Laying laying = new Laying(new CountOne.Intro(16), CountRate.ONE, 60, Laying.UNTIL_THE_MUSIC_ENDS);
        Timeline timeline = Timeline.lay(dance, BeatGrid.steady(new Tempo(bpm), 0, 400, 4), laying);
        CallSettings settings = new CallSettings(Beats.of(2), Beats.of(4), level, CallSettings.Fading.STEADY);
        return CallPlan.make(timeline, settings, BY_LETTERS).calls().stream()
                .filter(call -> call.wall() == 2 && call.kind() != Call.Kind.CHANGE)
                .toList();
    }
}
