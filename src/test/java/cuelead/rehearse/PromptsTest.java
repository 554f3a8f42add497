package cuelead.rehearse;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.rehearse.Prompts.Amount;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class PromptsTest {
    private static final List<String> WORDS = List.of("step", "touch", "half turn", "rock", "recover", "hold");

    private static PlannedCall call(String word, double seconds, int wall, String section) {
        return PlannedCall.of(word, seconds, OptionalDouble.of(seconds + 0.5), 1, wall, section);
    }

    /** Five walls of two sections of three calls. */
    private static List<PlannedCall> plan() {
        List<PlannedCall> plan = new ArrayList<>();
        for (int wall = 1; wall <= 5; wall++) {
            for (int i = 0; i < WORDS.size(); i++) {
                plan.add(call(WORDS.get(i), 10 * wall + i, wall, i < 3 ? "S1" : "S2"));
            }
        }
        return plan;
    }

    private static Progress wrong(String... places) {
        Rehearsed one = new Rehearsed(
                LocalDateTime.of(2026, 11, 27, 12, 0),
                Map.of(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                List.of(places));
        return Progress.NONE.with(one);
    }

    private static List<String> words(List<Prompt> prompts, int wall) {
        return prompts.stream()
                .map(Prompt::call)
                .filter(call -> call.wall() == wall)
                .map(PlannedCall::word)
                .toList();
    }

    @Test
    void promptsThinOutFromWallToWall() {
        List<Prompt> prompts = new Prompts(plan(), Progress.NONE).of(Amount.FEWER);
        assertEquals(WORDS, words(prompts, 1));
        assertTrue(words(prompts, 2).containsAll(List.of("step", "half turn", "rock")));
        assertTrue(words(prompts, 2).size() < WORDS.size());
        assertEquals(List.of("step", "half turn", "rock"), words(prompts, 3));
        assertEquals(List.of("step", "rock"), words(prompts, 4));
        assertEquals(List.of(), words(prompts, 5));
    }

    @Test
    void whatWentWrongIsPromptedInEveryWall() {
        Prompts prompts = new Prompts(plan(), wrong("S2 hold"));
        assertEquals(List.of("hold"), words(prompts.of(Amount.FEWER), 5));
        List<Prompt> only = prompts.of(Amount.WRONG);
        assertEquals(5, only.size());
        assertTrue(only.stream().allMatch(prompt -> prompt.call().word().equals("hold")));
        assertEquals(5, prompts.hard().size());
    }

    @Test
    void theFirstTimeTurnsAreHardAndNothingIsKnownToBeWrong() {
        Prompts prompts = new Prompts(plan(), Progress.NONE);
        assertEquals(prompts.of(Amount.FEWER), prompts.of(Amount.WRONG));
        assertTrue(prompts.hard().stream().allMatch(call -> call.word().equals("half turn")));
        assertEquals(30, prompts.of(Amount.ALL).size());
        assertEquals(List.of(), prompts.of(Amount.NONE));
    }

    @Test
    void aPlanWithoutWallsThinsOutByQuarters() {
        List<PlannedCall> plan = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            plan.add(PlannedCall.of("step", i, OptionalDouble.empty(), 0, 0, ""));
        }
        List<Prompt> prompts = new Prompts(plan, Progress.NONE).of(Amount.FEWER);
        assertEquals(
                10,
                prompts.stream().filter(prompt -> prompt.call().seconds() < 10).count());
        assertEquals(
                0,
                prompts.stream().filter(prompt -> prompt.call().seconds() >= 20).count());
    }

    @Test
    void thePromptComesABeatBeforeTheCallAndNeverTooShort() {
        assertEquals(
                9.4,
                Prompt.of(PlannedCall.of("step", 10, OptionalDouble.of(11.2), 2, 1, "S1"))
                        .breatheSeconds(),
                1e-9);
        assertEquals(
                9.5,
                Prompt.of(PlannedCall.of("step", 10, OptionalDouble.of(10.3), 1, 1, "S1"))
                        .breatheSeconds(),
                1e-9);
        assertEquals(
                9.3,
                Prompt.of(PlannedCall.of("step", 10, OptionalDouble.empty(), 0, 1, "S1"))
                        .breatheSeconds(),
                1e-9);
    }

    @Test
    void placesAreTheSameInEveryWall() {
        List<PlannedCall> plan = List.of(
                call("step", 1, 1, "S1"), call("step", 2, 1, "S1"), call("step", 3, 2, "S1"), call("step", 4, 0, ""));
        assertEquals(List.of("S1 step", "S1 step #2", "S1 step", "step"), CallPlaces.of(plan));
    }
}
