package cuelead.plan;

import cuelead.dance.Action;
import cuelead.dance.Count;
import cuelead.dance.CountOne;
import cuelead.dance.CountRate;
import cuelead.dance.Dance;
import cuelead.dance.Direction;
import cuelead.dance.Foot;
import cuelead.dance.Header;
import cuelead.dance.Metre;
import cuelead.dance.OwnCall;
import cuelead.dance.Part;
import cuelead.dance.Restart;
import cuelead.dance.Section;
import cuelead.dance.Step;
import cuelead.dance.Tag;
import cuelead.dance.Transfer;
import cuelead.dance.Turn;
import cuelead.dance.Weight;
import cuelead.time.BeatGrid;
import cuelead.time.Tempo;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Small dances made without a sheet, and words whose length is known. */
final class PlanFixtures {
    /** 0.12 s before the centre, and 60 ms a letter after it, at least 0.2 s: "recover" 0.42, "side" 0.24. */
    static final WordTimes BY_LETTERS =
            words -> Optional.of(new WordTimes.Length(0.12, Math.max(0.2, 0.06 * words.length())));

    private PlanFixtures() {}

    /** The dance with its one tag behind another count of its walls. */
    static Dance withBridgeAt(Dance dance, int count) {
        Tag tag = dance.tags().get(0);
        return new Dance(
                dance.header(),
                dance.parts(),
                dance.sequence(),
                List.of(new Tag(tag.part(), tag.afterWalls(), OptionalInt.of(count), tag.statedFacing(), tag.line())),
                dance.restarts(),
                dance.ending(),
                dance.claims());
    }

    /** So many counts of steps in place, right foot first; the last one turns so many degrees. */
    static Section section(String name, int counts, int turnDegrees) {
        return section(name, counts, turnDegrees, List.of());
    }

    static Section section(String name, int counts, int turnDegrees, List<OwnCall> ownCalls) {
        List<Step> steps = new ArrayList<>();
        for (int number = 1; number <= counts; number++) {
            Foot foot = number % 2 == 1 ? Foot.RIGHT : Foot.LEFT;
            Turn turn = number == counts ? new Turn(turnDegrees) : Turn.NONE;
            steps.add(new Step(
                    Count.on(number),
                    Optional.of(foot),
                    Action.STEP,
                    Direction.SIDE,
                    turn,
                    Transfer.FULL,
                    Weight.on(foot),
                    0,
                    0));
        }
        return new Section(name, "", counts, steps, List.of(), ownCalls, 0);
    }

    /** Four eights whose last count turns so far. */
    static Dance eights(int turnDegrees) {
        return dance(Metre.EIGHTS, part("A", 8, 4, turnDegrees), List.of(), List.of());
    }

    static Part part(String name, int counts, int sections, int turnDegrees) {
        List<Section> list = new ArrayList<>();
        for (int i = 1; i <= sections; i++) {
            list.add(section("S" + i, counts, i == sections ? turnDegrees : 0));
        }
        return new Part(name, list);
    }

    static Dance dance(Metre metre, Part part, List<Tag> tags, List<Restart> restarts) {
        return new Dance(header(metre), List.of(part), List.of(), tags, restarts, Optional.empty());
    }

    static Header header(Metre metre) {
        return new Header(
                "Test",
                metre,
                OptionalInt.empty(),
                OptionalInt.empty(),
                "",
                OptionalDouble.empty(),
                "",
                Optional.empty(),
                OptionalDouble.empty(),
                CountRate.ONE,
                Weight.LEFT);
    }

    static Laying intro(int counts, double endSeconds) {
        return new Laying(new CountOne.Intro(counts), CountRate.ONE, endSeconds, Laying.UNTIL_THE_MUSIC_ENDS);
    }

    static BeatGrid steady(double beatsPerMinute) {
        return BeatGrid.steady(new Tempo(beatsPerMinute), 0, 700, 4);
    }

    static Timeline timeline(Dance dance, double beatsPerMinute, double endSeconds) {
        return Timeline.lay(dance, steady(beatsPerMinute), intro(16, endSeconds));
    }
}
