package cuelead.dance;

import cuelead.report.Problem;
import cuelead.report.Problem.Severity;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What a dance cannot be, told from the dance alone: a foot that steps while it bears the weight, clock times, walls
 * and lengths that do not add up, ends and restarts that leave the wrong foot free. Each mistake is told once.
 */
public final class DanceCheck {
    /** Actions that a foot can do while the weight is on it. */
    private static final Set<Action> ON_WEIGHTED_FOOT = EnumSet.of(
            Action.BOUNCE,
            Action.BUMP,
            Action.DROP,
            Action.FAN,
            Action.PIVOT,
            Action.SPIN,
            Action.SWAY,
            Action.UNWIND,
            Action.HIPROLL,
            Action.DWIGHT);

    private final Dance dance;
    private final String file;
    private final List<Problem> problems = new ArrayList<>();
    private final WallWalk walls;
    private final KnownTurns turns;

    private DanceCheck(Dance dance, String file) {
        this.dance = dance;
        this.file = file;
        this.walls = new WallWalk(dance);
        this.turns = new KnownTurns(dance);
    }

    /** All that is wrong, in the order of the sheet; empty when nothing is. */
    public static List<Problem> check(Dance dance, String fileName) {
        DanceCheck check = new DanceCheck(dance, fileName);
        check.run();
        return check.problems.stream()
                .sorted(Comparator.comparingInt(Problem::line).thenComparingInt(Problem::column))
                .toList();
    }

    private void run() {
        problems.addAll(LengthCheck.check(dance, file));
        feet();
        clockMarks();
        if (!dance.isPhrased()) {
            statedWalls();
            loop();
            dance.restarts().forEach(this::restart);
            dance.tags().forEach(this::tag);
        }
    }

    /** The free-foot rule, over the dance and then over each tag from the weight in which it begins. */
    private void feet() {
        Weight weight = dance.header().startWeight();
        for (Part part : dance.parts()) {
            weight = feet(part, dance.parts().indexOf(part) == 0 ? weight : entry(part, weight));
        }
        for (Tag tag : dance.tags()) {
            feet(tag.part(), endOfWall());
        }
    }

    /** A later part of a phrased dance begins as the part before it in the sequence ends. */
    private Weight entry(Part part, Weight fallback) {
        int at = dance.sequence().indexOf(part.name());
        if (at < 1) {
            return fallback;
        }
        String before = dance.sequence().get(at - 1);
        return dance.parts().stream()
                .filter(other -> other.name().equals(before))
                .findFirst()
                .map(other -> endWeight(other, fallback))
                .orElse(fallback);
    }

    private Weight feet(Part part, Weight before) {
        Weight weight = before;
        for (Step step : WallWalk.steps(part)) {
            Foot foot = step.foot().orElse(Foot.LEFT);
            boolean acts = step.foot().isPresent()
                    && step.direction() != Direction.CONT
                    && !ON_WEIGHTED_FOOT.contains(step.action());
            if (acts && weight.isOn(foot)) {
                String other = foot.other().word();
                error(
                        "impossible_weight",
                        step.line(),
                        step.column(),
                        "On count " + step.count().label() + " the " + foot.word() + " foot has a "
                                + step.action().word() + " to do, but it bears the weight.",
                        "Let the " + other + " foot do it, or let the " + other
                                + " foot take the weight on the action before.");
            }
            weight = step.weightAfter();
        }
        return weight;
    }

    private Weight endWeight(Part part, Weight before) {
        return WallWalk.weightAfter(part, Integer.MAX_VALUE / 2, before);
    }

    private Weight endOfWall() {
        return endWeight(dance.parts().get(0), dance.header().startWeight());
    }

    /**
     * Marks that are wrong by as much as the mark before follow from it and are not told again; the first one behind a
     * line in doubt tells where the dancers face there.
     */
    private void clockMarks() {
        for (Part part : dance.parts()) {
            marksOf(part, Facing.FRONT);
        }
        for (Tag tag : dance.tags()) {
            if (tag.afterWalls().size() == 1
                    && !dance.isPhrased()
                    && isWallKnown(tag.afterWalls().get(0))) {
                marksOf(tag.part(), walls.beforeTags(tag.afterWalls().get(0)));
            }
        }
    }

    private void marksOf(Part part, Facing start) {
        int carried = 0;
        Counts checked = Counts.ZERO;
        for (ClockMark mark : dance.claims().clockMarks()) {
            if (!mark.part().equals(part.name())) {
                continue;
            }
            Facing real = start.after(WallWalk.turnThrough(part, mark.afterCounts()));
            int off = Math.floorMod(mark.stated().degrees() - real.degrees(), 360);
            boolean doubtful = turns.isDoubtful(part, checked, mark.afterCounts());
            if (off != 0 && off != carried && !doubtful) {
                error(
                        "wrong_clock",
                        mark.line(),
                        mark.column(),
                        "The sheet says " + mark.stated().clock() + " here, but its turns end at " + real.clock() + ".",
                        "Write " + real.clock() + ", or correct the turn before it.");
            }
            carried = off;
            checked = mark.afterCounts();
        }
    }

    private void statedWalls() {
        int stated = dance.header().statedWalls().orElse(0);
        Optional<Turn> known = turns.net(dance.parts().get(0));
        if (known.isEmpty()) {
            return;
        }
        int net = Math.floorMod(known.get().degrees(), 360);
        int real = net == 0 ? 1 : 360 / gcd(net, 360);
        if (stated > 0 && stated != real) {
            error(
                    "wrong_walls",
                    dance.claims().wallsLine(),
                    0,
                    "The header says " + walls(stated) + ", but the turns add up to " + degrees(net) + ", which makes "
                            + walls(real) + ".",
                    "Write " + walls(real) + ", or check the turns.");
        }
    }

    private static String walls(int number) {
        return number + (number == 1 ? " wall" : " walls");
    }

    private static String degrees(int net) {
        return switch (net) {
            case 0 -> "no turn";
            case 90 -> "a quarter turn right";
            case 180 -> "half a turn";
            case 270 -> "a quarter turn left";
            default -> net + " degrees right";
        };
    }

    private static int gcd(int a, int b) {
        return b == 0 ? a : gcd(b, a % b);
    }

    private void loop() {
        Weight start = dance.header().startWeight();
        Weight end = endOfWall();
        if (clash(start, end)) {
            List<Step> steps = WallWalk.steps(dance.parts().get(0));
            error(
                    "loop_weight",
                    steps.get(steps.size() - 1).line(),
                    0,
                    "The dance ends with the weight on " + word(end) + ", but begins with the weight on " + word(start)
                            + ", so it cannot begin again.",
                    "Let the last action touch instead of step, or step instead of touch.");
        }
    }

    private static boolean clash(Weight wanted, Weight found) {
        return (wanted == Weight.LEFT && found == Weight.RIGHT) || (wanted == Weight.RIGHT && found == Weight.LEFT);
    }

    private static String word(Weight weight) {
        return weight == Weight.LEFT ? "left" : "right";
    }

    private void restart(Restart restart) {
        Part part = dance.parts().get(0);
        if (restart.afterCount() >= part.counts()) {
            error(
                    "restart_late",
                    restart.line(),
                    0,
                    restart.afterCount() == part.counts()
                            ? "This restart comes after the last count, where the dance begins again anyway."
                            : "This restart comes after count " + restart.afterCount() + ", but the dance has only "
                                    + part.counts() + ".",
                    "Check the count.");
            return;
        }
        Weight start = dance.header().startWeight();
        Weight there = WallWalk.weightAfter(part, restart.afterCount(), start);
        if (clash(start, there)) {
            error(
                    "restart_weight",
                    restart.line(),
                    0,
                    "After count " + restart.afterCount() + " the weight is on " + word(there)
                            + ", but count 1 begins with the weight on " + word(start) + ".",
                    "Restart a count earlier or later, or change the last step before it to a touch.");
        }
        if (walls.isKnown(restart.wall(), restart.afterCount())) {
            facing(
                    "restart_facing",
                    restart.line(),
                    restart.statedFacing(),
                    walls.after(restart.wall(), restart.afterCount()),
                    "After count " + restart.afterCount() + " of wall " + restart.wall());
        }
    }

    private boolean isWallKnown(int wall) {
        return walls.isKnown(wall, dance.parts().get(0).counts());
    }

    private void tag(Tag tag) {
        Weight end = endWeight(tag.part(), endOfWall());
        if (clash(dance.header().startWeight(), end)) {
            error(
                    "tag_weight",
                    tag.line(),
                    0,
                    "The tag ends with the weight on " + word(end) + ", but count 1 begins with the weight on "
                            + word(dance.header().startWeight()) + ".",
                    "Let its last action touch instead of step, or step instead of touch.");
        }
        tag.afterWalls().stream()
                .limit(1)
                .filter(this::isWallKnown)
                .forEach(wall -> facing(
                        "tag_facing",
                        tag.line(),
                        tag.statedFacing(),
                        walls.beforeTags(wall),
                        "At the end of wall " + wall));
    }

    private void facing(String kind, int line, Optional<Facing> stated, Facing real, String where) {
        if (stated.isPresent() && !stated.get().equals(real)) {
            error(
                    kind,
                    line,
                    0,
                    where + " the dancers face " + real.clock() + ", not "
                            + stated.get().clock() + ".",
                    "Write " + real.clock() + ", or check the wall and the count.");
        }
    }

    private void error(String kind, int line, int column, String sentence, String tryThis) {
        problems.add(new Problem(Severity.ERROR, kind, file, line, column, sentence, tryThis));
    }
}
