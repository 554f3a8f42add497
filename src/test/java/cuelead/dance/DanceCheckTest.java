package cuelead.dance;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.report.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Mistakes planted in a right dance are found, each once, and nothing else is. */
class DanceCheckTest {
    @Test
    void aRightDanceIsQuiet() {
        assertEquals(List.of(), kinds(DanceFixtures.turning(90, 4, List.of(), List.of())));
    }

    /** Walls from the net turn: none 1, half 2, quarter 4, eighth 8. Common practice, no source. */
    @ParameterizedTest
    @CsvSource({"0, 1", "180, 2", "-180, 2", "90, 4", "-90, 4", "270, 4", "450, 4", "45, 8", "135, 8", "360, 1"})
    void wallsFollowFromTheNetTurn(int degrees, int walls) {
        assertEquals(List.of(), kinds(DanceFixtures.turning(degrees, walls, List.of(), List.of())));
        assertEquals(List.of("wrong_walls"), kinds(DanceFixtures.turning(degrees, walls + 1, List.of(), List.of())));
    }

    /** Whichever step is given to the foot that bears the weight. */
    @Property(seed = "20261125")
    void aStepOnTheWeightedFootIsFound(@ForAll @IntRange(min = 1, max = 8) int number) {
        Section right = DanceFixtures.marching("S1", Turn.NONE);
        List<Step> steps = new ArrayList<>(right.steps());
        Foot wrong = steps.get(number - 1).foot().orElseThrow().other();
        steps.set(number - 1, DanceFixtures.step(number, wrong, Turn.NONE));
        List<Problem> found = DanceCheck.check(dance(steps, 8, 8), "sheet.txt");
        Problem first = found.stream()
                .filter(problem -> problem.kind().equals("impossible_weight"))
                .findFirst()
                .orElseThrow();
        assertEquals(number, first.line());
        assertEquals(5, first.column());
    }

    @Property(seed = "20261125")
    void aWrongTotalIsFound(@ForAll @IntRange(min = 1, max = 64) int stated) {
        List<Step> steps = DanceFixtures.marching("S1", Turn.NONE).steps();
        assertEquals(stated == 8 ? List.of() : List.of("count_total"), kinds(dance(steps, 8, stated)));
    }

    /** A pivot turns away from the foot in front: R forward, turn left. Published glossaries. */
    @ParameterizedTest
    @CsvSource({"RIGHT, -180, 0", "RIGHT, -90, 0", "RIGHT, 180, 1", "LEFT, 180, 0", "LEFT, -180, 1", "LEFT, -90, 1"})
    void aPivotOverTheFootInFrontIsFound(Foot front, int degrees, int wrong) {
        Step forward = new Step(
                Count.on(1),
                Optional.of(front),
                Action.STEP,
                Direction.FWD,
                Turn.NONE,
                Transfer.FULL,
                Weight.on(front),
                1,
                5);
        Step pivot = new Step(
                Count.on(2),
                Optional.of(front.other()),
                Action.PIVOT,
                Direction.PLACE,
                new Turn(degrees),
                Transfer.FULL,
                Weight.on(front.other()),
                1,
                20);
        assertEquals(wrong == 0 ? List.of() : List.of(pivot), PivotCheck.wrongWay(List.of(forward, pivot)));
    }

    /** An odd number of steps leaves the other foot free at the end; seven counts are no eight. */
    @Test
    void aSectionOfSeven() {
        List<Step> steps = DanceFixtures.marching("S1", Turn.NONE).steps().subList(0, 7);
        assertEquals(List.of("missing_counts", "loop_weight"), kinds(dance(steps, 7, 7)));
    }

    @ParameterizedTest
    @CsvSource({
        "8, 0, ''",
        "8, 180, restart_facing",
        "7, 0, restart_weight",
        "16, 0, restart_late",
        "99, 0, restart_late"
    })
    void restarts(int after, int facing, String expected) {
        Restart restart = new Restart(1, after, Optional.of(new Facing(facing)), 3);
        List<String> found = kinds(DanceFixtures.turning(90, 4, List.of(), List.of(restart)));
        assertEquals(expected.isEmpty() ? List.of() : List.of(expected), found);
    }

    @ParameterizedTest
    @CsvSource({"1, 90, ''", "1, 0, tag_facing", "4, 0, ''", "3, 270, ''"})
    void tags(int wall, int facing, String expected) {
        Part part = new Part("TAG", List.of(DanceFixtures.marching("TAG", Turn.NONE)));
        Tag tag = new Tag(part, List.of(wall), Optional.of(new Facing(facing)), 3);
        List<String> found = kinds(DanceFixtures.turning(90, 4, List.of(tag), List.of()));
        assertEquals(expected.isEmpty() ? List.of() : List.of(expected), found);
    }

    @Test
    void aClockMarkThatTheTurnsDoNotReach() {
        Dance quiet = DanceFixtures.turning(90, 4, List.of(), List.of());
        ClockMark right = new ClockMark("A", Counts.of(9), new Facing(90), 9, 20);
        ClockMark wrong = new ClockMark("A", Counts.of(8), new Facing(90), 8, 20);
        Claims claims = new Claims(List.of(wrong, right), List.of(), 2, 2, 2);
        Dance marked =
                new Dance(quiet.header(), quiet.parts(), List.of(), List.of(), List.of(), Optional.empty(), claims);
        List<Problem> found = DanceCheck.check(marked, "sheet.txt");
        assertEquals(
                List.of("sheet.txt:8:20: error: The sheet says 3:00 here, but its turns end at 12:00. "
                        + "Write 12:00, or correct the turn before it."),
                found.stream().map(Problem::message).toList());
    }

    private static Dance dance(List<Step> steps, int length, int stated) {
        Section section = new Section("S1", "", length, steps, List.of(), List.of(), 1);
        return new Dance(
                DanceFixtures.header(stated, 1),
                List.of(new Part("A", List.of(section))),
                List.of(),
                List.of(),
                List.of(),
                Optional.empty());
    }

    private static List<String> kinds(Dance dance) {
        return DanceCheck.check(dance, "sheet.txt").stream().map(Problem::kind).toList();
    }
}
