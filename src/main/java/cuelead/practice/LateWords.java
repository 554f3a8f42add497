package cuelead.practice;

import cuelead.plan.Call;
import cuelead.report.Problem;
import cuelead.report.Refused;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Has the words spoken that a take had to guess, those that are heard soon first, while it plays. Used on one thread. */
final class LateWords implements AutoCloseable {
    /** A call that comes so soon does not wait until all words are spoken. */
    private static final double SOON_SECONDS = 2.5;

    private final VoiceTimes words;
    private final Speaking speaking;
    private final WordDoubts doubts;
    private final Runnable allSpoken;
    private boolean isAllSpoken;

    /** @param allSpoken to be run when nothing of a take is guessed for the first time */
    LateWords(VoiceTimes words, Speaking speaking, WordDoubts doubts, Runnable allSpoken) {
        this.words = words;
        this.speaking = speaking;
        this.doubts = doubts;
        this.allSpoken = allSpoken;
    }

    /**
     * Whether a take should be made anew, as words have been spoken that it guessed.
     *
     * @param seconds what is heard of it now
     * @throws Refused what keeps the voice from speaking
     */
    boolean areThereFor(Take take, double seconds) throws Refused {
        noteIfAllSpoken(take);
        if (take.guessed().isEmpty()) {
            return false;
        }
        boolean isBusy = speaking.isBusy();
        speaking.check();
        words.learn(speaking.spoken());
        if (words.knowsAll(take.guessed())) {
            return true;
        }
        if (!isBusy) {
            speaking.begin(inOrder(take, seconds));
        }
        return take.plan().calls().stream()
                .filter(call -> take.guessed().contains(call.words()))
                .filter(call -> call.startsSeconds() > seconds && call.startsSeconds() < seconds + SOON_SECONDS)
                .anyMatch(call -> words.knows(call.words()));
    }

    /** To be told of the first take, too. */
    void noteIfAllSpoken(Take take) {
        if (take.guessed().isEmpty() && !isAllSpoken) {
            isAllSpoken = true;
            allSpoken.run();
        }
    }

    private List<String> inOrder(Take take, double seconds) {
        Set<String> inOrder = new LinkedHashSet<>();
        take.plan().calls().stream()
                .filter(call -> call.startsSeconds() > seconds)
                .map(Call::words)
                .filter(take.guessed()::contains)
                .forEach(inOrder::add);
        inOrder.addAll(take.guessed());
        inOrder.removeIf(words::knows);
        return List.copyOf(inOrder);
    }

    /** Whether all that a take guessed has been spoken by now. */
    boolean areAllThereFor(Take take) {
        words.learn(speaking.spoken());
        return words.knowsAll(take.guessed());
    }

    /** Words that were asked for and that no voice can say, as far as it is known. */
    List<Problem> unsaid() {
        return doubts.unsaid(words.asked());
    }

    @Override
    public void close() {
        speaking.close();
    }
}
