package cuelead.dance;

import cuelead.report.Problem;
import cuelead.report.Problem.Severity;
import java.util.List;

/** Whether easier steps leave the dancers on the foot and at the wall of those that they stand for; who dances them would part from the class. */
final class EasyCheck {
    private EasyCheck() {}

    static List<Problem> check(Dance dance, String file) {
        return dance.options().stream()
                .filter(option -> !option.steps().isEmpty() && !dance.isDanced(option))
                .map(option -> partsFromTheClass(option, file))
                .toList();
    }

    private static Problem partsFromTheClass(EasyOption option, String file) {
        return new Problem(
                Severity.NOTE,
                "easy_option",
                file,
                option.steps().get(0).line(),
                0,
                "The easier steps for counts " + option.counts() + " of " + option.section()
                        + " end on another foot or wall than the steps as written.",
                "Let them end alike; until then they are not called, with --easy either.");
    }
}
