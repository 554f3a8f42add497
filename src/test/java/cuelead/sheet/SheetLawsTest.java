package cuelead.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.dance.Dance;
import cuelead.dance.Facing;
import cuelead.dance.FigureRun;
import cuelead.dance.Part;
import cuelead.dance.Restart;
import cuelead.dance.Section;
import cuelead.dance.Step;
import cuelead.dance.Tag;
import cuelead.dance.Turn;
import cuelead.dance.WallWalk;
import cuelead.dance.Weight;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What holds for every right sheet, on the demo sheets: as an instructor would check them on the floor. */
class SheetLawsTest {
    private static final String LAMP = "lamp-on-the-quay";
    private static final String WALTZ = "slack-water-waltz";
    private static final String ROPE = "rope-walk-ramble";

    /** A foot steps only when it is free, from count 1 through the dance, and round to count 1 again. */
    @ParameterizedTest
    @ValueSource(strings = {LAMP, WALTZ, ROPE})
    void weightGoesFromFootToFoot(String name) throws Exception {
        Dance dance = dance(name);
        Weight end = walk(dance.parts().get(0), dance.header().startWeight());
        assertEquals(dance.header().startWeight(), end);
        for (Tag tag : dance.tags()) {
            assertEquals(end, walk(tag.part(), end));
        }
    }

    private static Weight walk(Part part, Weight start) {
        Weight weight = start;
        for (Section section : part.sections()) {
            for (Step step : section.steps()) {
                boolean pivots = step.action().word().equals("pivot")
                        || step.action().word().equals("sway");
                boolean cont = step.direction().word().equals("cont");
                if (step.foot().isPresent() && !pivots && !cont) {
                    assertTrue(
                            !weight.isOn(step.foot().get()),
                            section.name() + " count " + step.count().label());
                }
                if (step.foot().isPresent() && step.transfer().takesWeight()) {
                    weight = Weight.on(step.foot().get());
                }
                assertEquals(
                        weight,
                        step.weightAfter(),
                        section.name() + " count " + step.count().label());
            }
        }
        return weight;
    }

    /** The turns of a wall, danced as often as the sheet has walls, come home; no sooner. */
    @ParameterizedTest
    @ValueSource(strings = {LAMP, WALTZ, ROPE})
    void theWallsComeHome(String name) throws Exception {
        Dance dance = dance(name);
        Turn net = dance.parts().get(0).netTurn();
        Facing facing = Facing.FRONT;
        Set<Facing> faced = new HashSet<>();
        for (int wall = 1; wall <= dance.header().statedWalls().orElseThrow(); wall++) {
            assertTrue(faced.add(facing), "faced twice: " + facing.clock());
            facing = facing.after(net);
        }
        assertEquals(Facing.FRONT, facing);
    }

    /** Whole counts 1, 2, 3 ... of each section are all danced, and the sections add up to the stated length. */
    @ParameterizedTest
    @ValueSource(strings = {LAMP, WALTZ, ROPE})
    void theCountsAddUp(String name) throws Exception {
        Dance dance = dance(name);
        int sum = 0;
        for (Section section : dance.parts().get(0).sections()) {
            long whole = section.steps().stream()
                    .filter(step -> step.count().isWhole())
                    .count();
            assertEquals(section.length(), whole, section.name());
            sum += section.length();
        }
        assertEquals(dance.header().statedCounts().orElseThrow(), sum);
    }

    /** What a figure run says is danced is what the steps say. */
    @ParameterizedTest
    @ValueSource(strings = {LAMP, WALTZ, ROPE})
    void figureRunsAreTheSteps(String name) throws Exception {
        for (Section section : dance(name).parts().get(0).sections()) {
            for (FigureRun run : section.figures()) {
                List<Step> steps = section.steps().subList(run.firstStep(), run.endStep());
                assertEquals(
                        steps.stream().map(Step::foot).toList(),
                        run.danced().pattern().stream().map(beat -> beat.foot()).toList());
                assertEquals(
                        steps.stream().map(Step::turn).toList(),
                        run.danced().pattern().stream().map(beat -> beat.turn()).toList());
            }
        }
    }

    /** A 32-count, 4-wall beginner's dance: one step a count, no turn over a quarter, no restart, no tag. */
    @Test
    void theBeginnersDanceIsOneForBeginners() throws Exception {
        Dance dance = dance(LAMP);
        assertEquals("Beginner", dance.header().level());
        steps(dance).forEach(step -> assertTrue(Math.abs(step.turn().degrees()) <= 90));
        assertEquals(2, steps(dance).filter(step -> !step.count().isWhole()).count(), "two shuffles");
        assertTrue(dance.restarts().isEmpty() && dance.tags().isEmpty());
    }

    @Test
    void theWaltzHasItsTag() throws Exception {
        Dance dance = dance(WALTZ);
        assertTrue(steps(dance).allMatch(step -> step.count().isWhole()));
        assertEquals(1, dance.tags().size());
        assertTrue(dance.restarts().isEmpty());
    }

    @Test
    void theImproversDanceIsSyncopatedAndRestartsOnce() throws Exception {
        Dance dance = dance(ROPE);
        assertTrue(steps(dance).filter(step -> !step.count().isWhole()).count() >= 8);
        assertEquals(1, dance.restarts().size());
        Restart restart = dance.restarts().get(0);
        WallWalk walk = new WallWalk(dance);
        assertEquals(restart.statedFacing().orElseThrow(), walk.after(restart.wall(), restart.afterCount()));
        assertEquals(walk.after(restart.wall(), restart.afterCount()), walk.startOf(restart.wall() + 1));
    }

    /** Line ends, a byte-order mark, spaces at the end and blank lines change nothing. */
    @ParameterizedTest
    @ValueSource(strings = {LAMP, WALTZ, ROPE})
    void whatIsNotSeenChangesNothing(String name) throws Exception {
        String text = text(name);
        List<String> rows = SheetDump.rows(read(text));
        assertEquals(rows, SheetDump.rows(read(text.replace("\n", "\r\n"))));
        assertEquals(rows, SheetDump.rows(read(text.replace("\n", "\r"))));
        assertEquals(rows, SheetDump.rows(read(text.replace("\n", "  \t\n\n"))));
    }

    /** Left and right changed places everywhere: the same dance in the mirror. */
    @ParameterizedTest
    @ValueSource(strings = {LAMP, WALTZ, ROPE})
    void theMirroredSheetIsTheMirroredDance(String name) throws Exception {
        List<Step> steps = steps(dance(name)).toList();
        List<Step> mirrored = steps(read(mirror(text(name)))).toList();
        assertEquals(steps.size(), mirrored.size());
        for (int i = 0; i < steps.size(); i++) {
            assertEquals(
                    steps.get(i).foot().map(foot -> foot.other()),
                    mirrored.get(i).foot(),
                    "step " + i);
            assertEquals(steps.get(i).turn().mirrored(), mirrored.get(i).turn(), "step " + i);
            assertEquals(steps.get(i).action(), mirrored.get(i).action(), "step " + i);
            assertEquals(steps.get(i).count(), mirrored.get(i).count(), "step " + i);
        }
        assertEquals(mirror(mirror(text(name))), text(name));
    }

    private static String mirror(String text) {
        StringBuilder mirrored = new StringBuilder();
        for (String word : text.split("\\b", -1)) {
            mirrored.append(
                    switch (word) {
                        case "R" -> "L";
                        case "L" -> "R";
                        case "left" -> "right";
                        case "right" -> "left";
                        case "LEFT" -> "RIGHT";
                        case "RIGHT" -> "LEFT";
                        default -> word;
                    });
        }
        return mirrored.toString();
    }

    private static Stream<Step> steps(Dance dance) {
        return dance.parts().get(0).sections().stream().flatMap(section -> section.steps().stream());
    }

    private static Dance dance(String name) throws Exception {
        return read(text(name));
    }

    private static Dance read(String text) {
        return SheetReader.read("sheet.txt", text).dance().orElseThrow();
    }

    private static String text(String name) throws Exception {
        return Files.readString(Path.of("cues", name + ".txt"));
    }
}
