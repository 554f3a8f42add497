package cuelead.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.dance.Count;
import cuelead.dance.Dance;
import cuelead.dance.Metre;
import cuelead.dance.OwnCall;
import cuelead.dance.Part;
import cuelead.dance.Restart;
import cuelead.dance.Tag;
import cuelead.english.NumberWords;
import cuelead.plan.Call.Kind;
import cuelead.time.BeatGrid;
import cuelead.time.BeatPosition;
import cuelead.time.Beats;
import cuelead.time.Tempo;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CallPlanTest {
    private static final CallSettings WORDS = CallSettings.withLead(Beats.of(2));

    /** At every tempo and lead: no call meets the next, each ends early enough, and none comes later than asked. */
    @Property(tries = 60, seed = "20261125")
    void callsNeverOverlapAndLeaveTimeToMove(
            @ForAll @DoubleRange(min = 60, max = 220) double beatsPerMinute,
            @ForAll @IntRange(min = 1, max = 8) int leadHalves) {
        CallSettings settings = CallSettings.withLead(new Beats(Beats.HALF.ticks() * leadHalves));
        CallPlan plan = CallPlan.make(
                PlanFixtures.timeline(everything(), beatsPerMinute, 120), settings, PlanFixtures.BY_LETTERS);
        assertTrue(plan.calls().size() > 10);
        for (int i = 0; i < plan.calls().size(); i++) {
            Call call = plan.calls().get(i);
            if (i > 0) {
                assertTrue(call.startsSeconds() > plan.calls().get(i - 1).endsSeconds(), call.toString());
            }
            if (call.beatSeconds().isPresent()) {
                assertTrue(call.roomSeconds().getAsDouble() >= CallPlan.LEAST_ROOM_SECONDS - 1e-9, call.toString());
                assertTrue(call.lead().compareTo(settings.lead()) >= 0, call.toString());
            }
        }
    }

    /** Every turn, section, restart, tag and wall is called at every tempo. */
    @Property(tries = 40, seed = "20261125")
    void changesAreCalledAtEveryTempo(@ForAll @DoubleRange(min = 60, max = 200) double beatsPerMinute) {
        Timeline timeline = PlanFixtures.timeline(everything(), beatsPerMinute, 16 * 60 / beatsPerMinute + 150);
        CallPlan plan = CallPlan.make(timeline, WORDS, PlanFixtures.BY_LETTERS);
        for (Run run : timeline.runs()) {
            String name = run.isTag() ? "tag" : "wall " + NumberWords.cardinal(run.wall());
            assertTrue(
                    plan.calls().stream()
                            .anyMatch(c -> c.kind() == Kind.CHANGE && c.words().startsWith(name)),
                    name);
        }
        assertEquals(2, count(plan, c -> c.words().startsWith("tag")));
        assertEquals(2, count(plan, c -> c.words().startsWith("restart")));
        for (DancedCount count : timeline.counts()) {
            if (count.isFirstOfSection()) {
                assertTrue(has(plan, Kind.SECTION, count), count.toString());
            }
            if (!count.turn().isNone()) {
                assertTrue(has(plan, Kind.FIGURE, count), count.toString());
            }
        }
    }

    @Test
    void aCallSitsItsLeadBeforeItsBeatOnADriftingGrid() {
        double[] seconds = new double[200];
        int[] inBar = new int[200];
        for (int i = 0; i < 200; i++) {
            seconds[i] = i == 0 ? 0.3 : seconds[i - 1] + 0.55 + 0.02 * Math.sin(i / 9.0);
            inBar[i] = 1 + i % 4;
        }
        BeatGrid grid = new BeatGrid(seconds, inBar, new int[200]);
        Timeline timeline = Timeline.lay(PlanFixtures.eights(90), grid, PlanFixtures.intro(16, 100));
        for (Call call : CallPlan.make(timeline, WORDS, PlanFixtures.BY_LETTERS).calls()) {
            if (call.beatSeconds().isPresent()) {
                double beat = call.beatSeconds().getAsDouble();
                double expected = grid.secondsAt(grid.positionAt(beat).minus(call.lead()));
                assertEquals(expected, call.centreSeconds(), 1e-3);
            }
        }
    }

    /** A word that would end less than 0.3 s before its beat gets more lead, by half beats, and no more than needed. */
    @Test
    void theLeadGrowsByHalfBeatsWhereTimeIsShort() {
        Timeline timeline = PlanFixtures.timeline(PlanFixtures.eights(0), 180, 60);
        WordTimes slow = words -> Optional.of(new WordTimes.Length(0.05, 0.4));
        CallSettings settings = CallSettings.withLead(Beats.of(1));
        for (Call call : CallPlan.make(timeline, settings, slow).calls()) {
            if (call.kind() == Kind.WORD) {
                assertEquals(2.5, call.lead().toDecimal(), "0.7 s at 180 a minute are 2.1 beats");
            }
        }
    }

    @Test
    void theCountInGivesWayToTheFirstCalls() {
        CallPlan plan =
                CallPlan.make(PlanFixtures.timeline(PlanFixtures.eights(0), 104, 60), WORDS, PlanFixtures.BY_LETTERS);
        List<String> countIn = plan.calls().stream()
                .filter(c -> c.kind() == Kind.COUNT_IN)
                .map(Call::words)
                .toList();
        assertEquals(List.of("five", "six"), countIn);
        Call five = plan.calls().stream()
                .filter(c -> c.words().equals("five"))
                .findFirst()
                .orElseThrow();
        assertEquals(12 * 60 / 104.0, five.centreSeconds(), 1e-9);
    }

    /** Whatever the lead, up to a lively tempo: a beat from word to word, at least two of them, none among the calls. */
    @ParameterizedTest
    @CsvSource({"8, 1", "8, 1.5", "8, 2", "8, 2.5", "8, 3", "6, 1", "6, 1.5", "6, 2", "6, 3"})
    void theCountInIsEven(int section, double leadBeats) {
        Metre metre = section == 6 ? Metre.SIXES : Metre.EIGHTS;
        Dance dance = PlanFixtures.dance(metre, PlanFixtures.part("A", section, 4, 0), List.of(), List.of());
        for (double tempo : new double[] {60, 90, 120}) {
            BeatGrid grid = BeatGrid.steady(new Tempo(tempo), 0, 400, metre.beatsInBar());
            Timeline timeline = Timeline.lay(dance, grid, PlanFixtures.intro(24, 60));
            CallSettings settings = CallSettings.withLead(Beats.ofDecimal(leadBeats));
            List<Call> calls =
                    CallPlan.make(timeline, settings, PlanFixtures.BY_LETTERS).calls();
            List<Call> countIn =
                    calls.stream().filter(c -> c.kind() == Kind.COUNT_IN).toList();
            assertTrue(countIn.size() >= 2, tempo + ": " + countIn);
            int first = calls.indexOf(countIn.get(0));
            assertEquals(countIn, calls.subList(first, first + countIn.size()));
            for (int i = 1; i < countIn.size(); i++) {
                double apart =
                        countIn.get(i).centreSeconds() - countIn.get(i - 1).centreSeconds();
                assertEquals(60 / tempo, apart, 1e-9);
            }
        }
    }

    @Test
    void aWaltzIsCountedInWithFourFiveSix() {
        Dance waltz = PlanFixtures.dance(Metre.SIXES, PlanFixtures.part("A", 6, 8, 0), List.of(), List.of());
        Timeline timeline = Timeline.lay(waltz, BeatGrid.steady(new Tempo(90), 0, 400, 3), PlanFixtures.intro(24, 60));
        CallPlan plan = CallPlan.make(timeline, CallSettings.withLead(Beats.ONE), PlanFixtures.BY_LETTERS);
        assertEquals(
                List.of("four", "five"),
                plan.calls().stream()
                        .filter(c -> c.kind() == Kind.COUNT_IN)
                        .map(Call::words)
                        .toList());
    }

    @Test
    void ownWordsWinAndSilenceIsKept() {
        Part part = new Part(
                "A",
                List.of(
                        PlanFixtures.section("S1", 8, 0),
                        PlanFixtures.section(
                                "S2", 8, 0, List.of(new OwnCall(Count.on(3), "glide"), new OwnCall(Count.on(4), "")))));
        CallPlan plan = CallPlan.make(
                PlanFixtures.timeline(PlanFixtures.dance(Metre.EIGHTS, part, List.of(), List.of()), 104, 40),
                WORDS,
                PlanFixtures.BY_LETTERS);
        assertTrue(plan.calls().stream().anyMatch(c -> c.words().equals("glide")));
        assertTrue(plan.calls().stream()
                .noneMatch(c -> c.kind() == Kind.WORD
                        && c.section().equals("S2")
                        && c.count().equals(Optional.of(Count.on(4)))));
        assertTrue(plan.leftOut().stream().anyMatch(o -> o.reason() == LeftOut.Reason.SILENT_ON_SHEET));
    }

    /** What opens a dance is told before the count-in, and its first word again at its count, like any other. */
    @Test
    void anOwnFirstWordIsCalledAtItsCountToo() {
        Part part =
                new Part("A", List.of(PlanFixtures.section("S1", 8, 0, List.of(new OwnCall(Count.on(1), "glide")))));
        Timeline timeline =
                PlanFixtures.timeline(PlanFixtures.dance(Metre.EIGHTS, part, List.of(), List.of()), 104, 40);
        CallPlan plan = CallPlan.make(timeline, WORDS, PlanFixtures.BY_LETTERS);
        DancedCount first = timeline.counts().get(0);
        List<Call> glides = plan.calls().stream()
                .filter(c -> c.words().equals("glide") && c.beatSeconds().getAsDouble() == first.songSeconds())
                .toList();
        assertEquals(2, glides.size());
        assertEquals(2, glides.get(1).lead().toDecimal(), 0.5);
    }

    /** The sheet's own words are said at their count; the next section's name finds its place around them. */
    @Property(tries = 30, seed = "20261125")
    void ownWordsGiveWayToNothing(@ForAll @DoubleRange(min = 60, max = 130) double beatsPerMinute) {
        List<OwnCall> own = List.of(new OwnCall(Count.on(7), "glide"), new OwnCall(Count.on(8), "drift"));
        Part part =
                new Part("A", List.of(PlanFixtures.section("S1", 8, 0, own), PlanFixtures.section("S2", 8, 90, own)));
        Timeline timeline =
                PlanFixtures.timeline(PlanFixtures.dance(Metre.EIGHTS, part, List.of(), List.of()), beatsPerMinute, 40);
        CallPlan plan = CallPlan.make(timeline, WORDS, PlanFixtures.BY_LETTERS);
        for (DancedCount count : timeline.counts()) {
            if (count.count().number() >= 7) {
                String word = count.count().number() == 7 ? "glide" : "drift";
                Call call = plan.calls().stream()
                        .filter(c -> c.words().equals(word) && c.beatSeconds().getAsDouble() == count.songSeconds())
                        .findFirst()
                        .orElseThrow();
                assertEquals(2, call.lead().toDecimal(), 1);
            }
        }
        assertEquals(
                timeline.counts().stream().filter(DancedCount::isFirstOfSection).count(),
                count(plan, c -> c.kind() == Kind.SECTION));
    }

    /** Among words a section is named in place of its first word, so that the counts before it keep theirs. */
    @Test
    void aSectionsNameTakesNoWordOfTheSectionBefore() {
        Timeline timeline = PlanFixtures.timeline(PlanFixtures.eights(0), 104, 60);
        CallPlan plan = CallPlan.make(timeline, WORDS, PlanFixtures.BY_LETTERS);
        for (DancedCount count : timeline.counts()) {
            boolean isMet = count.count().number() <= 2 || count.countInRun() >= 31;
            assertTrue(
                    isMet
                            || plan.calls().stream()
                                    .anyMatch(c -> c.beatSeconds().isPresent()
                                            && c.beatSeconds().getAsDouble() == count.songSeconds()),
                    count.section().name() + " " + count.count().label());
        }
    }

    /** A restart is called twice: early in its wall, and within the last eight beats. */
    @Property(tries = 20, seed = "20261125")
    void aRestartIsCalledJustBeforeItComes(@ForAll @DoubleRange(min = 70, max = 130) double beatsPerMinute) {
        Timeline timeline = PlanFixtures.timeline(everything(), beatsPerMinute, 150);
        List<Call> restarts = CallPlan.make(timeline, WORDS, PlanFixtures.BY_LETTERS).calls().stream()
                .filter(c -> c.words().startsWith("restart"))
                .toList();
        assertEquals("restart after sixteen", restarts.get(0).words());
        assertTrue(restarts.get(0).lead().toDecimal() > 8);
        assertTrue(restarts.get(1).lead().toDecimal() <= 8, restarts.get(1).toString());
    }

    @Test
    void aPieceOfADanceOpensLikeADance() {
        Timeline timeline = PlanFixtures.timeline(PlanFixtures.eights(90), 104, 120);
        DancedCount start = timeline.counts().get(32 + 16);
        BeatPosition end = start.at().plus(Beats.of(8));
        double earliest = timeline.grid().secondsAt(start.at().minus(Beats.of(8)));
        CallPlan plan = CallPlan.make(
                timeline, new Extent(start.at(), Optional.of(end), earliest), WORDS, PlanFixtures.BY_LETTERS);
        List<String> words = plan.calls().stream().map(Call::words).toList();
        assertEquals(Kind.SECTION, plan.calls().get(0).kind());
        assertEquals(List.of("five", "six"), words.subList(1, 3));
        for (Call call : plan.calls()) {
            assertTrue(call.startsSeconds() >= earliest, call.toString());
            assertTrue(call.kind() == Kind.COUNT_IN || call.section().equals("S3"), call.toString());
        }
        assertEquals(0, count(plan, c -> c.kind() == Kind.CHANGE));
    }

    @Test
    void whatTheVoiceCannotSayIsReported() {
        WordTimes noWalls = words -> words.startsWith("wall") ? Optional.empty() : PlanFixtures.BY_LETTERS.of(words);
        CallPlan plan = CallPlan.make(PlanFixtures.timeline(PlanFixtures.eights(90), 104, 60), WORDS, noWalls);
        assertTrue(plan.unspeakable().contains("wall one"), plan.unspeakable().toString());
    }

    @Test
    void levelsSayLessAndLess() {
        Timeline timeline = PlanFixtures.timeline(everything(), 104, 150);
        int before = Integer.MAX_VALUE;
        for (CallLevel level : CallLevel.values()) {
            CallSettings settings = new CallSettings(Beats.of(2), Beats.of(4), level, CallSettings.Fading.STEADY);
            int calls = CallPlan.make(timeline, settings, PlanFixtures.BY_LETTERS)
                    .calls()
                    .size();
            assertTrue(calls < before, level + ": " + calls);
            before = calls;
        }
        assertEquals(0, before);
    }

    @Test
    void aFadeStepsDownFromWallToWallButKeepsTheChanges() {
        CallSettings fading =
                new CallSettings(Beats.of(2), Beats.of(4), CallLevel.WORDS, CallSettings.Fading.WALL_BY_WALL);
        CallPlan plan = CallPlan.make(
                PlanFixtures.timeline(PlanFixtures.eights(90), 104, 200), fading, PlanFixtures.BY_LETTERS);
        List<CallLevel> levels = new ArrayList<>();
        for (int wall = 1; wall <= 5; wall++) {
            levels.add(fading.levelOf(wall));
        }
        assertEquals(
                List.of(CallLevel.WORDS, CallLevel.FIGURES, CallLevel.SECTIONS, CallLevel.CHANGES, CallLevel.CHANGES),
                levels);
        assertEquals(0, count(plan, c -> c.wall() >= 4 && c.kind() != Kind.CHANGE));
        assertTrue(count(plan, c -> c.wall() == 6 && c.kind() == Kind.CHANGE) == 1);
    }

    private static Dance everything() {
        return PlanFixtures.dance(
                Metre.EIGHTS,
                PlanFixtures.part("A", 8, 4, 90),
                List.of(new Tag(
                        new Part("TAG", List.of(PlanFixtures.section("TAG", 4, 0))), List.of(2), Optional.empty(), 0)),
                List.of(new Restart(3, 16, Optional.empty(), 0)));
    }

    private static boolean has(CallPlan plan, Kind kind, DancedCount target) {
        return plan.calls().stream()
                .anyMatch(c -> c.kind() == kind
                        && c.beatSeconds().isPresent()
                        && c.beatSeconds().getAsDouble() == target.songSeconds());
    }

    private static long count(CallPlan plan, java.util.function.Predicate<Call> wanted) {
        return plan.calls().stream().filter(wanted).count();
    }
}
