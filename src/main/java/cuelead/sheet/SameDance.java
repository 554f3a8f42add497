package cuelead.sheet;

import cuelead.dance.Dance;
import cuelead.dance.Section;
import cuelead.dance.Step;
import cuelead.report.Problem;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Whether a sheet still tells the same dance, whatever else of it has moved. */
final class SameDance {
    private SameDance() {}

    /** But for the calls of one section, and of those that repeat what is written there. */
    static boolean but(Dance before, Dance after, int called) {
        List<Section> old = before.sections().toList();
        List<Section> now = after.sections().toList();
        if (old.size() != now.size()
                || !before.header().equals(after.header())
                || !before.sequence().equals(after.sequence())
                || !walls(before).equals(walls(after))) {
            return false;
        }
        Set<Integer> lines = lines(old.get(called));
        for (int i = 0; i < old.size(); i++) {
            boolean mayBeCalledAnew = i == called || lines(old.get(i)).stream().anyMatch(lines::contains);
            if (!steps(old.get(i)).equals(steps(now.get(i)))
                    || old.get(i).length() != now.get(i).length()
                    || (!mayBeCalledAnew
                            && !old.get(i).ownCalls().equals(now.get(i).ownCalls()))) {
                return false;
            }
        }
        return true;
    }

    private static Set<Integer> lines(Section section) {
        return section.steps().stream().map(Step::line).collect(Collectors.toSet());
    }

    private static List<Step> steps(Section section) {
        return section.steps().stream().map(step -> step.writtenAt(0, 0)).toList();
    }

    /** What becomes of walls. */
    private static List<String> walls(Dance dance) {
        List<String> restarts = dance.restarts().stream()
                .map(restart -> restart.wall() + " " + restart.afterCount() + " "
                        + restart.changed().size())
                .toList();
        List<String> tags = dance.tags().stream()
                .map(tag -> tag.afterWalls() + " " + tag.afterCount())
                .toList();
        return List.of(
                restarts.toString(),
                tags.toString(),
                String.valueOf(dance.ending().isPresent()),
                String.valueOf(dance.options().size()));
    }

    /** Whether no kind of problem is found more often. */
    static boolean hasNoMoreProblems(ReadSheet before, ReadSheet after) {
        TreeMap<String, Integer> kinds = new TreeMap<>();
        before.problems().forEach(problem -> kinds.merge(problem.kind(), 1, Integer::sum));
        for (Problem problem : after.problems()) {
            if (kinds.merge(problem.kind(), -1, Integer::sum) < 0) {
                return false;
            }
        }
        return true;
    }
}
