package cuelead.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.dance.CountOne;
import cuelead.dance.CountRate;
import cuelead.dance.Dance;
import cuelead.dance.Metre;
import cuelead.dance.Part;
import cuelead.dance.Restart;
import cuelead.dance.Tag;
import cuelead.time.BeatGrid;
import cuelead.time.Tempo;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class TimelineTest {
    /** The trade's worked example: 200 s, 16 intro, 32 counts at 104 gives 10 walls and about 11 counts. */
    @Test
    void tenWallsAndElevenCountsInTwoHundredSeconds() {
        Timeline timeline = PlanFixtures.timeline(PlanFixtures.eights(90), 104, 200);
        assertEquals(11, timeline.walls());
        assertFalse(timeline.ending().isWhole());
        DancedCount last = timeline.ending().last().orElseThrow();
        assertEquals(11, last.run().wall());
        assertEquals(11, last.countInRun());
        assertEquals("S2", last.section().name());
        assertEquals("6:00", timeline.ending().facing().clock());
    }

    /** The trade's worked example: a waltz of 48 over 210 s with 24 intro at 90 goes through 6.06 times. */
    @Test
    void sixWallsOfWaltzInTwoHundredAndTenSeconds() {
        Dance waltz = PlanFixtures.dance(Metre.SIXES, PlanFixtures.part("A", 6, 8, 90), List.of(), List.of());
        Timeline timeline = Timeline.lay(waltz, BeatGrid.steady(new Tempo(90), 0, 400, 3), PlanFixtures.intro(24, 210));
        assertEquals(7, timeline.walls());
        assertEquals(48 * 0.06, timeline.ending().last().orElseThrow().countInRun(), 1.2);
    }

    /** Facing at the start of wall n is (n - 1) times the net turn. */
    @Property(seed = "20261125")
    void wallsTurnByTheNetTurn(@ForAll @IntRange(min = -6, max = 6) int eighths) {
        Timeline timeline = PlanFixtures.timeline(PlanFixtures.eights(45 * eighths), 120, 150);
        for (Run run : timeline.runs()) {
            assertEquals(
                    Math.floorMod((run.wall() - 1) * 45 * eighths, 360),
                    run.startFacing().degrees());
        }
    }

    /** The trade's worked example: 10 walls of 32, a 4-count tag, one restart losing 16: 308 counts. */
    @Test
    void tagsAndRestartsMoveWhatFollows() {
        Dance dance = PlanFixtures.dance(
                Metre.EIGHTS,
                PlanFixtures.part("A", 8, 4, 180),
                List.of(new Tag(
                        new Part("TAG", List.of(PlanFixtures.section("TAG", 4, 0))), List.of(2), Optional.empty(), 0)),
                List.of(new Restart(5, 16, Optional.empty(), 0)));
        Timeline timeline = Timeline.lay(
                dance, PlanFixtures.steady(120), new Laying(new CountOne.Intro(0), CountRate.ONE, 1000, 10));
        assertEquals(308, timeline.counts().size());
        assertEquals(307 * 0.5, timeline.counts().get(307).songSeconds(), 1e-9);
        Run afterRestart = timeline.runs().get(6);
        assertEquals(6, afterRestart.wall());
        assertEquals("12:00", afterRestart.startFacing().clock(), "a wall broken off before its turn keeps its facing");
        assertTrue(timeline.runs().get(2).isTag());
    }

    @Test
    void theLeadInIsCountedFromTheFirstDownbeat() {
        BeatGrid pickup = new BeatGrid(
                new double[] {0.5, 1.0, 1.5, 2.0, 2.5, 3.0, 3.5, 4.0}, new int[] {3, 4, 1, 2, 3, 4, 1, 2}, new int[8]);
        Timeline timeline = Timeline.lay(PlanFixtures.eights(0), pickup, PlanFixtures.intro(4, 3.9));
        assertEquals(3.5, timeline.counts().get(0).songSeconds(), 1e-12);
    }

    @Test
    void countOneInSecondsTakesTheNearestBeat() {
        Laying laying = new Laying(new CountOne.AtSeconds(7.46), CountRate.ONE, 60, Laying.UNTIL_THE_MUSIC_ENDS);
        Timeline timeline = Timeline.lay(PlanFixtures.eights(0), PlanFixtures.steady(120), laying);
        assertEquals(7.5, timeline.counts().get(0).songSeconds(), 1e-12);
    }

    @Property(seed = "20261125")
    void twoCountsABeatTakeHalfTheTime(@ForAll @DoubleRange(min = 50, max = 200) double beatsPerMinute) {
        double wallSeconds = 32 * 60 / beatsPerMinute;
        for (CountRate rate : CountRate.values()) {
            Laying laying = new Laying(new CountOne.Intro(0), rate, 10 * wallSeconds, 2);
            Timeline timeline = Timeline.lay(PlanFixtures.eights(0), PlanFixtures.steady(beatsPerMinute), laying);
            double factor = 2.0 / rate.countsInTwoBeats();
            assertEquals(wallSeconds * factor, timeline.counts().get(32).songSeconds(), 1e-6);
        }
    }

    @Test
    void whatIsDancedAtATimeIsTheLastCountBegun() {
        Timeline timeline = PlanFixtures.timeline(PlanFixtures.eights(0), 120, 60);
        assertTrue(timeline.at(7.99).isEmpty());
        assertEquals("1", timeline.at(8.0).orElseThrow().count().label());
        assertEquals("2", timeline.at(8.99).orElseThrow().count().label());
    }
}
