package cuelead.studio;

import cuelead.rehearse.PlannedCall;
import cuelead.rehearse.Prompt;
import java.util.List;
import java.util.Optional;

/** What a rehearsal shows when. For one thread, along the song. */
public final class PromptTimes {
    /** A prompt goes so long after its call should have been heard. */
    private static final double STAYS_SECONDS = 0.2;

    private final List<PlannedCall> plan;
    private final List<Prompt> prompts;
    private int next;
    private int place;

    /** Both in order of time. */
    public PromptTimes(List<PlannedCall> plan, List<Prompt> prompts) {
        this.plan = plan;
        this.prompts = prompts;
    }

    /** The prompt whose moment has come since it was asked last, if any; to be asked again until there is none. */
    public Optional<Prompt> due(double songSeconds) {
        if (next == prompts.size() || prompts.get(next).breatheSeconds() > songSeconds) {
            return Optional.empty();
        }
        next++;
        return Optional.of(prompts.get(next - 1));
    }

    /** All that is shown at a moment. */
    public RehearsalScene at(double songSeconds) {
        while (place < plan.size() - 1 && plan.get(place).seconds() < songSeconds) {
            place++;
        }
        Optional<PlannedCall> prompted = Optional.of(next - 1)
                .filter(last -> last >= 0)
                .map(last -> prompts.get(last).call())
                .filter(call -> call.seconds() + STAYS_SECONDS > songSeconds);
        return new RehearsalScene(songSeconds, plan.get(place), prompted, prompted.flatMap(this::rightAfter));
    }

    /** The next prompt's call, where it is the very next one. */
    private Optional<PlannedCall> rightAfter(PlannedCall now) {
        int at = plan.indexOf(now);
        return next < prompts.size() && at + 1 < plan.size()
                ? Optional.of(prompts.get(next).call()).filter(plan.get(at + 1)::equals)
                : Optional.empty();
    }
}
