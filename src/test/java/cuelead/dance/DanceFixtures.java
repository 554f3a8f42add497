package cuelead.dance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Dances made without a sheet. */
final class DanceFixtures {
    private DanceFixtures() {}

    static Header header(int counts, int walls) {
        return new Header(
                "Gangplank",
                Metre.EIGHTS,
                OptionalInt.of(counts),
                OptionalInt.of(walls),
                "",
                OptionalDouble.empty(),
                "",
                Optional.empty(),
                OptionalDouble.empty(),
                CountRate.ONE,
                Weight.LEFT);
    }

    /** Eight steps in place, right foot first; the first one turns. */
    static Section marching(String name, Turn turn) {
        List<Step> steps = new ArrayList<>();
        for (int number = 1; number <= 8; number++) {
            steps.add(step(number, number % 2 == 1 ? Foot.RIGHT : Foot.LEFT, number == 1 ? turn : Turn.NONE));
        }
        return new Section(name, "", 8, steps, List.of(), List.of(), 1);
    }

    static Step step(int number, Foot foot, Turn turn) {
        return new Step(
                Count.on(number),
                Optional.of(foot),
                Action.INPLACE,
                Direction.PLACE,
                turn,
                Transfer.FULL,
                Weight.on(foot),
                number,
                5);
    }

    /** 16 counts that turn by {@code degrees} on count 9. */
    static Dance turning(int degrees, int walls, List<Tag> tags, List<Restart> restarts) {
        Part part = new Part("A", List.of(marching("S1", Turn.NONE), marching("S2", new Turn(degrees))));
        return new Dance(header(16, walls), List.of(part), List.of(), tags, restarts, Optional.empty());
    }
}
