package cuelead.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.FakeSpeakers;
import cuelead.dance.Count;
import cuelead.plan.Call;
import cuelead.plan.CallPlan;
import cuelead.plan.CallSettings;
import cuelead.plan.DancedCount;
import cuelead.plan.LeftOut;
import cuelead.plan.Run;
import cuelead.report.Refused;
import cuelead.time.Beats;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The demo dances with the real voice: enough is called, and nothing that a class cannot do without is missing. */
class DemoDancesTest {
    private static final Set<Call.Kind> CHANGES = Set.of(Call.Kind.SECTION, Call.Kind.CHANGE);

    @TempDir
    private static Path cache;

    /**
     * Of the whole counts on which the weight changes and whose word does not give way to another call, at least 85
     * of 100 are called at 104 a minute, "an easy tempo", and 70 at 120, "a lively one" (common practice).
     */
    @ParameterizedTest
    @CsvSource({
        "lamp-on-the-quay, 104, 85", "lamp-on-the-quay, 120, 70",
        "rope-walk-ramble, 104, 85", "rope-walk-ramble, 120, 70",
        "slack-water-waltz, 104, 85", "slack-water-waltz, 120, 70"
    })
    void enoughCountsAreCalled(String dance, double beatsPerMinute, double leastPercent) throws Refused {
        CallPlan plan = plan(dance, beatsPerMinute);
        Set<Double> called = beatsOf(plan, call -> !CHANGES.contains(call.kind()));
        Set<String> givingWay = plan.leftOut().stream()
                .filter(out -> out.reason() == LeftOut.Reason.GIVES_WAY)
                .map(out -> out.wall() + out.section() + out.count())
                .collect(Collectors.toSet());
        List<DancedCount> weighty = plan.timeline().counts().stream()
                .filter(count -> count.count().isWhole() && count.takesWeight())
                .filter(count -> called.contains(count.songSeconds()) || !givingWay.contains(nameOf(count)))
                .toList();
        long got = weighty.stream()
                .filter(count -> called.contains(count.songSeconds()))
                .count();
        double percent = 100.0 * got / weighty.size();
        assertTrue(percent >= leastPercent, String.format(Locale.ROOT, "%.1f of 100 counts", percent));
    }

    /** Its later words alone would mislead. Above a lively tempo there is no time for all of them. */
    @ParameterizedTest
    @CsvSource({
        "lamp-on-the-quay, 70, 1.5",
        "lamp-on-the-quay, 104, 2",
        "lamp-on-the-quay, 120, 2",
        "rope-walk-ramble, 70, 1.5",
        "rope-walk-ramble, 83, 1.5",
        "rope-walk-ramble, 104, 2",
        "rope-walk-ramble, 120, 2",
        "slack-water-waltz, 70, 1.5",
        "slack-water-waltz, 83, 1.5",
        "slack-water-waltz, 104, 2"
    })
    void aFigureIsBegunBeforeItsLaterWords(String dance, double beatsPerMinute, double leadBeats) throws Exception {
        CallPlan plan = plan(dance, beatsPerMinute, leadBeats);
        for (Run run : plan.timeline().runs()) {
            List<DancedCount> counts = plan.timeline().countsOf(run);
            for (DancedCount begin : counts) {
                List<DancedCount> later = laterOfFigure(counts, begin);
                if (later.stream().anyMatch(count -> isCalled(plan, count))) {
                    assertTrue(isCalled(plan, begin), nameOf(begin));
                }
            }
        }
    }

    /** Empty where none begins with the count. */
    private static List<DancedCount> laterOfFigure(List<DancedCount> counts, DancedCount begin) {
        return begin.section().figures().stream()
                .map(figure -> figure.stepsOf(begin.section()))
                .filter(steps -> begin.steps().contains(steps.get(0)))
                .findFirst()
                .map(steps -> counts.stream()
                        .filter(count -> count.section().equals(begin.section())
                                && count.at().compareTo(begin.at()) > 0)
                        .filter(count -> count.steps().stream().anyMatch(steps::contains))
                        .toList())
                .orElse(List.of());
    }

    private static boolean isCalled(CallPlan plan, DancedCount count) {
        return plan.calls().stream()
                .filter(call -> call.beatSeconds().isPresent())
                .anyMatch(call -> call.beatSeconds().getAsDouble() == count.songSeconds());
    }

    /** Wherever a jump lands, six or eight counts before its section, the section is named. */
    @ParameterizedTest
    @CsvSource({
        "lamp-on-the-quay, 110, 2",
        "slack-water-waltz, 92, 2",
        "slack-water-waltz, 120, 2",
        "rope-walk-ramble, 110, 4"
    })
    void aSectionThatIsJumpedToIsNamed(String dance, double beatsPerMinute, double leadBeats) throws Exception {
        Wish wish = Wishes.atTempo(Path.of("cues", dance + ".txt"), beatsPerMinute);
        List<Jump> jumps = new ArrayList<>();
        try (Practice practice = Practice.prepare(wish, new Places(cache, Path.of("")), (work, done) -> {})) {
            FakeSpeakers speakers = new FakeSpeakers(practice.rate());
            LivePractice live = practice.live(speakers);
            live.calls(now -> CallSettings.withLead(Beats.ofDecimal(leadBeats)));
            for (int i = 1; i < 8; i++) {
                for (int look = 0; look < 100; look++) {
                    speakers.hear(0.02);
                    live.tick();
                }
                live.jumpSections(1, jumps::add);
                for (int look = 0; look < 40; look++) {
                    speakers.hear(0.02);
                    live.tick();
                }
                DancedCount aim = live.heard().aim().orElseThrow();
                List<String> before = live.heard().calls().stream()
                        .map(SpokenCall::call)
                        .filter(call -> call.startsSeconds() < aim.songSeconds())
                        .filter(call -> call.kind() == Call.Kind.SECTION)
                        .map(Call::words)
                        .toList();
                assertEquals(1, before.size(), aim.section().name() + " " + before);
            }
        }
    }

    /** Three walks are three words. */
    @Test
    void eachWalkIsSaidOnce() throws Exception {
        List<String> walks = plan("lamp-on-the-quay", 110).calls().stream()
                .filter(call -> call.wall() == 2 && call.section().equals("S4"))
                .map(Call::words)
                .filter(words -> words.startsWith("walk"))
                .toList();
        assertEquals(List.of("walk", "walk", "walk"), walks);
    }

    private static String nameOf(DancedCount count) {
        return count.run().wall() + count.section().name() + count.count().label();
    }

    @ParameterizedTest
    @CsvSource({
        "lamp-on-the-quay, 80", "lamp-on-the-quay, 150",
        "rope-walk-ramble, 80", "rope-walk-ramble, 150",
        "slack-water-waltz, 80", "slack-water-waltz, 150"
    })
    void everyChangeIsCalledAtEveryTempo(String dance, double beatsPerMinute) throws Refused {
        CallPlan plan = plan(dance, beatsPerMinute);
        Set<Double> sections = beatsOf(plan, call -> call.kind() == Call.Kind.SECTION);
        for (DancedCount count : plan.timeline().counts()) {
            if (count.isFirstOfSection() && !count.steps().isEmpty()) {
                assertTrue(sections.contains(count.songSeconds()), "section " + nameOf(count));
            }
            if (!count.turn().isNone() && count.run().wall() == 1 && !isLaterTurnOfFigure(count)) {
                assertTrue(isTurnTold(plan, count), "turn " + nameOf(count));
            }
        }
        List<String> changes = plan.calls().stream()
                .filter(call -> call.kind() == Call.Kind.CHANGE)
                .map(Call::words)
                .toList();
        List<Run> walls =
                plan.timeline().runs().stream().filter(run -> !run.isTag()).toList();
        assertEquals(
                walls.size(),
                changes.stream().filter(words -> words.startsWith("wall")).count());
        assertEquals(2L * ended(walls), count(changes, "restart"));
        assertEquals(2L * (plan.timeline().runs().size() - walls.size()), count(changes, "tag"));
    }

    /** A turn is told, with its side, for its count or for the count that begins its figure. */
    private static boolean isTurnTold(CallPlan plan, DancedCount count) {
        String side = count.turn().degrees() > 0 ? "right" : "left";
        Count begin = count.section().figures().stream()
                .map(figure -> count.section().steps().subList(figure.firstStep(), figure.endStep()))
                .filter(steps -> steps.contains(count.steps().get(0)))
                .map(steps -> steps.get(0).count())
                .findFirst()
                .orElse(count.count());
        return plan.calls().stream()
                .filter(call -> call.wall() == count.run().wall()
                        && call.section().equals(count.section().name()))
                .filter(call -> call.count().equals(Optional.of(count.count()))
                        || call.count().equals(Optional.of(begin)))
                .anyMatch(call -> call.words().contains(side));
    }

    private static boolean isLaterTurnOfFigure(DancedCount count) {
        return count.section().figures().stream()
                .map(figure -> count.section().steps().subList(figure.firstStep(), figure.endStep()))
                .anyMatch(steps -> steps.stream()
                        .filter(step -> !step.turn().isNone())
                        .anyMatch(step -> step.count().compareTo(count.count()) < 0
                                && steps.contains(count.steps().get(0))));
    }

    private static long ended(List<Run> walls) {
        return walls.stream().filter(wall -> wall.restart().isPresent()).count();
    }

    private static long count(List<String> changes, String word) {
        return changes.stream().filter(words -> words.startsWith(word)).count();
    }

    private static Set<Double> beatsOf(CallPlan plan, Predicate<Call> wanted) {
        return plan.calls().stream()
                .filter(wanted)
                .filter(call -> call.beatSeconds().isPresent())
                .map(call -> call.beatSeconds().getAsDouble())
                .collect(Collectors.toSet());
    }

    private static CallPlan plan(String dance, double beatsPerMinute) throws Refused {
        return plan(Wishes.atTempo(Path.of("cues", dance + ".txt"), beatsPerMinute));
    }

    private static CallPlan plan(String dance, double beatsPerMinute, double leadBeats) throws Refused {
        return plan(Wishes.atTempo(Path.of("cues", dance + ".txt"), beatsPerMinute, leadBeats));
    }

    private static CallPlan plan(Wish wish) throws Refused {
        try (Practice practice = Practice.prepare(wish, new Places(cache, Path.of("")), (work, done) -> {})) {
            assertEquals(Set.of(), practice.plan().unspeakable());
            return practice.plan();
        }
    }
}
