package cuelead.practice;

import cuelead.dance.Restart;
import cuelead.dance.Tag;
import cuelead.plan.Timeline;
import cuelead.report.Problem;
import java.util.ArrayList;
import java.util.List;

/** Finds restarts and tags of walls that the music does not last for. */
final class NeverDanced {
    private NeverDanced() {}

    /** @param sheet name of the sheet's file */
    static List<Problem> check(Timeline timeline, String sheet) {
        List<Problem> problems = new ArrayList<>();
        int walls = timeline.walls();
        for (Restart restart : timeline.dance().restarts()) {
            if (restart.wall() > walls) {
                problems.add(problem(sheet, restart.line(), "The restart on wall " + restart.wall(), walls));
            }
        }
        for (Tag tag : timeline.dance().tags()) {
            tag.afterWalls().stream()
                    .filter(wall -> wall > walls)
                    .map(wall -> problem(sheet, tag.line(), "The tag after wall " + wall, walls))
                    .forEach(problems::add);
        }
        return problems;
    }

    private static Problem problem(String sheet, int line, String what, int walls) {
        return new Problem(
                Problem.Severity.WARNING,
                "never_danced",
                sheet,
                line,
                0,
                what + " is never danced: the music lasts for " + walls + (walls == 1 ? " wall." : " walls."),
                "Check its wall, or take a longer song.");
    }
}
