package cuelead.practice;

import cuelead.plan.Call;
import cuelead.plan.Extent;
import cuelead.plan.Timeline;
import java.util.Set;
import java.util.stream.Collectors;

/** Makes the take that is heard first: of the words that it had to guess, only those that are heard soon are waited for. */
final class FirstTake {
    /** The others are spoken meanwhile, which takes a second or two, with a voice of another program some more. */
    private static final double SOON_SECONDS = 4;

    private final TakeMaker takes;
    private final VoiceTimes words;

    FirstTake(TakeMaker takes, VoiceTimes words) {
        this.takes = takes;
        this.words = words;
    }

    /**
     * Makes it.
     *
     * @param fromSeconds what is heard first
     */
    Take make(Timeline timeline, Manner manner, double fromSeconds) {
        Take take = takes.make(timeline, Extent.whole(timeline), manner);
        Set<String> soon = guessedSoon(take, fromSeconds);
        while (!soon.isEmpty()) {
            words.learnNow(soon);
            take = takes.make(timeline, Extent.whole(timeline), manner);
            soon = guessedSoon(take, fromSeconds);
        }
        return take;
    }

    private static Set<String> guessedSoon(Take take, double fromSeconds) {
        return take.plan().calls().stream()
                .filter(call ->
                        call.startsSeconds() >= fromSeconds && call.startsSeconds() < fromSeconds + SOON_SECONDS)
                .map(Call::words)
                .filter(take.guessed()::contains)
                .collect(Collectors.toSet());
    }
}
