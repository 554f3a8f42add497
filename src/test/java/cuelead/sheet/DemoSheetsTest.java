package cuelead.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.dance.CountOne;
import cuelead.dance.Counts;
import cuelead.dance.Dance;
import cuelead.dance.DanceCheck;
import cuelead.dance.Facing;
import cuelead.dance.FigureRun;
import cuelead.dance.Metre;
import cuelead.dance.OwnCall;
import cuelead.dance.Restart;
import cuelead.dance.Section;
import cuelead.dance.Step;
import cuelead.dance.Tag;
import cuelead.dance.Weight;
import cuelead.report.Problem;
import cuelead.report.Refused;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The demo sheets of {@code cues/}: they read without a word of complaint and say what their heads say. */
class DemoSheetsTest {
    @Test
    void theBeginnersDance() throws Refused {
        Dance dance = dance("lamp-on-the-quay");
        facts(dance, "LAMP ON THE QUAY", Metre.EIGHTS, 32, 4, 104, 16, Weight.LEFT);
        assertEquals(90, dance.parts().get(0).netTurn().degrees());
        assertEquals(
                List.of(
                        "vine",
                        "vine",
                        "rock_recover",
                        "shuffle_back",
                        "rock_back",
                        "shuffle_fwd",
                        "jazz_box_quarter",
                        "step_touch",
                        "step_touch"),
                figures(dance).subList(0, 9));
        assertEquals(List.of(), dance.tags());
        assertEquals(List.of(), dance.restarts());
    }

    @Test
    void theWaltz() throws Refused {
        Dance dance = dance("slack-water-waltz");
        facts(dance, "Slack Water Waltz", Metre.SIXES, 48, 2, 90, 24, Weight.RIGHT);
        assertEquals(-540, dance.parts().get(0).netTurn().degrees());
        Tag tag = dance.tags().get(0);
        assertEquals(List.of(2), tag.afterWalls());
        assertEquals(6, tag.part().counts());
        assertEquals(Optional.of(Facing.FRONT), tag.statedFacing());
    }

    @Test
    void theImproversDance() throws Refused {
        Dance dance = dance("rope-walk-ramble");
        facts(dance, "Rope Walk Ramble", Metre.EIGHTS, 32, 2, 116, 16, Weight.LEFT);
        assertEquals(-180, dance.parts().get(0).netTurn().degrees());
        Restart restart = dance.restarts().get(0);
        assertEquals(3, restart.wall());
        assertEquals(16, restart.afterCount());
        assertEquals(Optional.of(new Facing(180)), restart.statedFacing());
        assertEquals(
                List.of(
                        "kick_ball_change",
                        "shuffle_fwd",
                        "rock_recover",
                        "coaster",
                        "pivot_half",
                        "sailor",
                        "sailor",
                        "heel_switches",
                        "side_rock",
                        "behind_side_cross",
                        "side_rock",
                        "behind_side_cross",
                        "toe_switches",
                        "walk",
                        "coaster"),
                figures(dance));
        List<OwnCall> calls = dance.parts().get(0).sections().get(1).ownCalls();
        assertEquals(4, calls.size());
        assertTrue(calls.get(1).isSilence());
        assertEquals("7&", calls.get(1).count().label());
    }

    private static void facts(
            Dance dance, String title, Metre metre, int counts, int walls, double tempo, int intro, Weight weight) {
        assertEquals(title, dance.header().title());
        assertEquals(metre, dance.header().metre());
        assertEquals(counts, dance.counts());
        assertEquals(walls, dance.header().statedWalls().orElseThrow());
        assertEquals(tempo, dance.header().statedTempo().orElseThrow());
        assertEquals(Optional.of(new CountOne.Intro(intro)), dance.header().countOne());
        assertEquals(weight, dance.header().startWeight());
        List<Step> steps = dance.parts().get(0).sections().stream()
                .flatMap(section -> section.steps().stream())
                .toList();
        assertEquals(weight, steps.get(steps.size() - 1).weightAfter());
        for (Section section : dance.parts().get(0).sections()) {
            assertEquals(metre.countsInSection(), section.length());
            assertEquals(Counts.ZERO, section.steps().get(0).count().offset());
        }
    }

    private static List<String> figures(Dance dance) {
        return dance.parts().get(0).sections().stream()
                .flatMap(section -> section.figures().stream())
                .map(FigureRun::figure)
                .map(figure -> figure.id())
                .toList();
    }

    private static Dance dance(String name) throws Refused {
        Path file = Path.of("cues", name + ".txt");
        ReadSheet sheet = SheetFile.read(file);
        Dance dance = sheet.dance().orElseThrow();
        List<String> problems = Stream.concat(
                        sheet.problems().stream(), DanceCheck.check(dance, file.toString()).stream())
                .map(Problem::message)
                .toList();
        assertEquals(List.of(), problems);
        assertEquals("demo-songs/" + name + ".mp3", dance.header().song());
        return dance;
    }
}
