package cuelead.cli;

import cuelead.rehearse.PlannedCall;
import cuelead.rehearse.Prompt;
import cuelead.steer.Told;
import java.util.List;
import java.util.Optional;

/** What a rehearsal shows when: the place in the song, the call to breathe for, and the one behind it. For one thread. */
final class PromptLine {
    /** A prompt goes so long after its call should have been heard. */
    private static final double STAYS_SECONDS = 0.2;

    private final List<PlannedCall> plan;
    private final List<Prompt> prompts;
    private int next;
    private int place;

    /** Both in order of time. */
    PromptLine(List<PlannedCall> plan, List<Prompt> prompts) {
        this.plan = plan;
        this.prompts = prompts;
    }

    /** The prompt whose moment has come since it was asked last, if any; to be asked again until there is none. */
    Optional<String> due(double songSeconds) {
        if (next == prompts.size() || prompts.get(next).breatheSeconds() > songSeconds) {
            return Optional.empty();
        }
        next++;
        PlannedCall call = prompts.get(next - 1).call();
        return Optional.of(Told.minutes(songSeconds) + "  " + call.word());
    }

    /** All that is shown at a moment. */
    String at(double songSeconds) {
        while (place < plan.size() - 1 && plan.get(place).seconds() < songSeconds) {
            place++;
        }
        PlannedCall call = plan.get(place);
        String where = (call.wall() > 0 ? "  wall " + call.wall() : "")
                + (call.section().isEmpty() ? "" : "  " + call.section());
        return Told.minutesAndSeconds(songSeconds) + where + "   " + prompted(songSeconds);
    }

    private String prompted(double songSeconds) {
        int last = next - 1;
        boolean isNow = last >= 0 && prompts.get(last).call().seconds() + STAYS_SECONDS > songSeconds;
        if (!isNow) {
            return "...";
        }
        String after = next < prompts.size() && isSoon(last)
                ? "   then " + prompts.get(next).call().word()
                : "";
        return "[ " + prompts.get(last).call().word() + " ]" + after;
    }

    /** Whether the next prompt is for the very next call. */
    private boolean isSoon(int last) {
        int now = plan.indexOf(prompts.get(last).call());
        return now + 1 < plan.size()
                && plan.get(now + 1).equals(prompts.get(next).call());
    }
}
