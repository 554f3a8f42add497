package cuelead.dance;

import cuelead.report.Problem;
import cuelead.report.Problem.Severity;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Whether each part and tag of a phrased dance leaves free the foot with which the next one in the sequence begins,
 * itself included where it is danced twice running. What one step has done wrong is told once, however often it comes.
 */
final class PartJoins {
    private final Dance dance;
    private final String file;
    private final Map<String, Part> parts = new HashMap<>();

    PartJoins(Dance dance, String file) {
        this.dance = dance;
        this.file = file;
        Stream.concat(dance.parts().stream(), dance.tags().stream().map(Tag::part))
                .forEach(part -> parts.putIfAbsent(part.name(), part));
    }

    /** Two neighbours of which the second begins with the foot that bears the weight; {@code last} of the first. */
    private record Clash(String before, Weight end, int last, String next, Step first) {}

    List<Problem> check() {
        List<Clash> clashes = clashes();
        List<Problem> problems = new ArrayList<>();
        Set<String> told = new LinkedHashSet<>();
        for (Clash clash : clashes) {
            List<Clash> alike = clashes.stream()
                    .filter(other -> other.before().equals(clash.before()) && other.end() == clash.end())
                    .toList();
            boolean tag = dance.parts().stream().noneMatch(part -> part.name().equals(clash.before()));
            boolean itself = alike.stream().anyMatch(other -> other.next().equals(clash.before()));
            if (told.contains(clash.before()) || told.contains(clash.next() + " begins")) {
                continue;
            }
            if (tag || itself || alike.size() > 1) {
                told.add(clash.before());
                problems.add(wrongEnd(clash, tag, alike));
            } else {
                told.add(clash.next() + " begins");
                problems.add(wrongBeginning(clash));
            }
        }
        return problems;
    }

    /** Each pair of neighbours once, in the order of the sequence. */
    private List<Clash> clashes() {
        Set<Clash> clashes = new LinkedHashSet<>();
        List<String> names = dance.sequence();
        Weight weight = dance.header().startWeight();
        int run = 0;
        for (int i = 0; i < names.size(); i++) {
            Part part = parts.get(names.get(i));
            boolean isTag = !dance.parts().contains(part);
            run += isTag ? 0 : 1;
            Optional<Restart> cut = isTag ? Optional.empty() : cut(run);
            weight = cut.map(restart -> end(part, restart)).orElse(end(part, weight));
            int last = cut.map(Restart::line).orElse(lastLine(part));
            Weight end = weight;
            String next = i + 1 < names.size() ? names.get(i + 1) : "";
            Optional.ofNullable(parts.get(next))
                    .flatMap(behind -> impossible(behind, end))
                    .ifPresent(first -> clashes.add(new Clash(part.name(), end, last, next, first)));
        }
        return List.copyOf(clashes);
    }

    private Optional<Restart> cut(int run) {
        return dance.restarts().stream()
                .filter(restart -> restart.wall() == run)
                .findFirst();
    }

    private static Weight end(Part part, Restart cut) {
        return WallWalk.weightAfter(part, cut.afterCount(), Weight.UNKNOWN);
    }

    private static Weight end(Part part, Weight before) {
        return WallWalk.weightAfter(part, part.counts(), before);
    }

    private static int lastLine(Part part) {
        List<Step> steps = WallWalk.steps(part);
        return steps.isEmpty() ? 0 : steps.get(steps.size() - 1).line();
    }

    /** The first step of a part that a foot takes, where that foot bears the weight. */
    static Optional<Step> impossible(Part part, Weight before) {
        Weight weight = before;
        for (Step step : WallWalk.steps(part)) {
            if (step.foot().isPresent()) {
                boolean free = !weight.isOn(step.foot().get())
                        || step.direction() == Direction.CONT
                        || !step.action().needsFreeFoot();
                return free ? Optional.empty() : Optional.of(step);
            }
            weight = step.transfer() == Transfer.NONE ? weight : step.weightAfter();
        }
        return Optional.empty();
    }

    private Problem wrongEnd(Clash clash, boolean tag, List<Clash> alike) {
        List<String> next = alike.stream().map(Clash::next).distinct().toList();
        String ends = tag ? "The tag" : "Part " + clash.before();
        String begin = next.size() == 1 && next.get(0).equals(clash.before())
                ? " when it is danced again, it begins"
                : " " + String.join(" and ", next) + (next.size() == 1 ? " begins" : " begin");
        return new Problem(
                Severity.ERROR,
                tag ? "tag_weight" : "loop_weight",
                file,
                clash.last(),
                0,
                ends + " ends with the weight on " + word(clash.end()) + ", but" + begin + " with the "
                        + clash.first().foot().orElseThrow().word() + " foot.",
                "Let its last action touch instead of step, or step instead of touch.");
    }

    private Problem wrongBeginning(Clash clash) {
        Foot foot = clash.first().foot().orElseThrow();
        return new Problem(
                Severity.ERROR,
                "impossible_weight",
                file,
                clash.first().line(),
                clash.first().column(),
                clash.next() + " begins with the " + foot.word() + " foot, but " + clash.before()
                        + ", which the sequence has before it, ends with the weight on that foot.",
                "Begin with the " + foot.other().word() + " foot, or let " + clash.before()
                        + " end with the weight on the other one.");
    }

    private static String word(Weight weight) {
        return weight == Weight.LEFT ? "left" : "right";
    }
}
