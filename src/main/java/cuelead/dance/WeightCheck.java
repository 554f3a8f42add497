package cuelead.dance;

import cuelead.report.Problem;
import cuelead.report.Problem.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Whether every foot that acts is free, through the dance, its tags and its restarts, and round to count 1 again. */
final class WeightCheck {
    private final Dance dance;
    private final String file;
    private final List<Problem> problems = new ArrayList<>();
    private final MissingCounts missing;
    /** Whether the end of the dance is told together with a foot of its last line. */
    private boolean endIsTold;

    private final Set<Step> behindMissing;

    private WeightCheck(Dance dance, String file) {
        this.dance = dance;
        this.missing = new MissingCounts(dance);
        this.behindMissing = missing.stepsBehind();
        this.file = file;
    }

    static List<Problem> check(Dance written, String file) {
        boolean wrongStart = StartWeight.isWrong(written);
        Dance dance = wrongStart ? StartWeight.corrected(written) : written;
        WeightCheck check = new WeightCheck(dance, file);
        check.feet();
        if (!dance.isPhrased()) {
            check.loop();
            dance.restarts().forEach(check::restart);
            dance.tags().forEach(check::tag);
        } else {
            check.problems.addAll(new PartJoins(dance, file).check());
        }
        if (wrongStart) {
            check.start(written);
        }
        return check.problems;
    }

    private void start(Dance written) {
        String stated = word(written.header().startWeight());
        error(
                "impossible_weight",
                written.claims().weightLine(),
                0,
                "The sheet says that the weight is on " + stated + " before count 1, but the dance begins with the "
                        + stated + " foot and ends with the weight on the other one.",
                "Write \"weight on " + word(dance.header().startWeight()) + "\".");
    }

    /** The free-foot rule, over the dance and then over each tag from the weight in which it begins. */
    private void feet() {
        Weight weight = dance.header().startWeight();
        for (Part part : dance.parts()) {
            weight = feet(part, dance.parts().indexOf(part) == 0 ? weight : entry(part, weight));
        }
        for (Tag tag : dance.tags()) {
            feet(tag.part(), dance.isPhrased() ? entry(tag.part(), Weight.UNKNOWN) : weightBefore(tag));
        }
    }

    /** A dance that ends on the wrong foot is told as such, and its tags begin as it should end. */
    private Weight weightBefore(Tag tag) {
        if (tag.afterCount().isPresent()) {
            return WallWalk.weightAfter(
                    dance.parts().get(0),
                    tag.afterCount().getAsInt(),
                    dance.header().startWeight());
        }
        Weight start = dance.header().startWeight();
        return clash(start, endOfWall()) ? Weight.UNKNOWN : endOfWall();
    }

    /** A later part of a phrased dance begins as the part before it in the sequence ends; if it cannot, that is told apart. */
    private Weight entry(Part part, Weight fallback) {
        int at = dance.sequence().indexOf(part.name());
        if (at < 1) {
            return fallback;
        }
        String before = dance.sequence().get(at - 1);
        Weight end = Stream.concat(dance.parts().stream(), dance.tags().stream().map(Tag::part))
                .filter(other -> other.name().equals(before))
                .findFirst()
                .map(other -> endWeight(other, fallback))
                .orElse(fallback);
        return PartJoins.impossible(part, end).isPresent() ? Weight.UNKNOWN : end;
    }

    /**
     * Behind a foot that cannot act, that foot or the one before it was written wrongly: until a foot takes the weight
     * again, what follows from the mistake is not told as another one.
     */
    private Weight feet(Part part, Weight before) {
        Weight weight = before;
        boolean told = false;
        List<Step> steps = WallWalk.steps(part);
        List<Integer> impossible = new ArrayList<>();
        for (int i = 0; i < steps.size(); i++) {
            Step step = steps.get(i);
            weight = behindMissing.contains(step) ? Weight.UNKNOWN : weight;
            boolean cannot = step.foot().filter(weight::isOn).isPresent()
                    && step.direction() != Direction.CONT
                    && step.action().needsFreeFoot();
            if (cannot && !told) {
                impossible.add(i);
            }
            boolean stays = told && !step.transfer().takesWeight();
            told = stays || (cannot && !told);
            weight = step.weightAfter();
        }
        boolean isWall = !dance.isPhrased() && part.equals(dance.parts().get(0));
        WrongFeet wrong = new WrongFeet(steps, file, isWall && endsWrong());
        problems.addAll(wrong.problems(impossible));
        endIsTold |= wrong.tellsOfEnd(impossible);
        return weight;
    }

    private Weight endWeight(Part part, Weight before) {
        return WallWalk.weightAfter(part, Integer.MAX_VALUE / 2, before);
    }

    private Weight endOfWall() {
        return endWeight(dance.parts().get(0), dance.header().startWeight());
    }

    /** Whether count 1 cannot be danced again behind the last count. */
    private boolean endsWrong() {
        return clash(dance.header().startWeight(), endOfWall()) && !missing.atEnd();
    }

    private void loop() {
        Weight start = dance.header().startWeight();
        Weight end = endOfWall();
        if (endsWrong() && !endIsTold) {
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
        boolean tagFirst = dance.tags().stream().anyMatch(tag -> WallWalk.endsWith(tag, restart));
        int place = missing.written(restart.afterCount());
        if (restart.afterCount() >= part.counts() || tagFirst || missing.areBehind(place)) {
            return;
        }
        Weight start = dance.header().startWeight();
        Weight there = restart.changed().isEmpty()
                ? WallWalk.weightAfter(part, place, start)
                : restart.changed().get(restart.changed().size() - 1).weightAfter();
        if (clash(start, there)) {
            error(
                    "restart_weight",
                    restart.line(),
                    0,
                    "After count " + restart.afterCount() + " the weight is on " + word(there)
                            + ", but count 1 begins with the weight on " + word(start) + ".",
                    "Restart a count earlier or later, or change the last step before it to a touch.");
        }
    }

    /** Behind a tag within a wall the wall goes on from where it was, or begins again. */
    private void tag(Tag tag) {
        Weight start = dance.header().startWeight();
        boolean within = tag.afterCount().isPresent();
        boolean again = dance.restarts().stream().anyMatch(restart -> WallWalk.endsWith(tag, restart));
        int next = again ? 1 : tag.afterCount().orElse(0) + 1;
        Weight there = within
                ? WallWalk.weightAfter(dance.parts().get(0), tag.afterCount().getAsInt(), start)
                : endOfWall();
        Weight wanted = within && !again ? there : start;
        Weight end = endWeight(tag.part(), there);
        if (clash(wanted, end)) {
            error(
                    "tag_weight",
                    tag.line(),
                    0,
                    "The tag ends with the weight on " + word(end) + ", but count " + next
                            + " begins with the weight on " + word(wanted) + ".",
                    "Let its last action touch instead of step, or step instead of touch.");
        }
    }

    private void error(String kind, int line, int column, String sentence, String tryThis) {
        problems.add(new Problem(Severity.ERROR, kind, file, line, column, sentence, tryThis));
    }
}
