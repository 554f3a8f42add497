package cuelead.rehearse;

import cuelead.dsp.speech.MelBands;
import java.util.Arrays;
import java.util.List;

/**
 * What it costs a search to begin a word, as the logarithm of odds: little where the plan has the word at about that time,
 * much where it does not. Equal over a third of a second to both sides, so that no time is preferred within it.
 */
final class WordOdds {
    /** A word begins so long before its centre, more or less. */
    private static final double BEFORE_CENTRE_SECONDS = 0.1;

    private static final double PLANNED_SECONDS = 0.38;
    /** From there on nothing is planned. */
    private static final double UNPLANNED_SECONDS = 0.7;

    private static final float PLANNED = -2;
    private static final float UNPLANNED = -16;

    private final float[][] odds;

    /**
     * @param plan             in seconds of the song
     * @param roundTripSeconds how much later the take is
     */
    WordOdds(List<Pronounced> words, List<PlannedCall> plan, double roundTripSeconds, int frames) {
        odds = new float[words.size()][frames];
        for (int word = 0; word < words.size(); word++) {
            Arrays.fill(odds[word], UNPLANNED);
            for (PlannedCall call : plan) {
                if (call.word().equals(words.get(word).word())) {
                    raise(odds[word], call.seconds() + roundTripSeconds - BEFORE_CENTRE_SECONDS);
                }
            }
        }
    }

    private static void raise(float[] odds, double atSeconds) {
        int first = (int) Math.max(0, (atSeconds - UNPLANNED_SECONDS) / MelBands.STEP_SECONDS);
        int last = (int) Math.min(odds.length - 1, (atSeconds + UNPLANNED_SECONDS) / MelBands.STEP_SECONDS);
        for (int frame = first; frame <= last; frame++) {
            double off = Math.abs(frame * MelBands.STEP_SECONDS - atSeconds);
            double part = Math.min(1, Math.max(0, (UNPLANNED_SECONDS - off) / (UNPLANNED_SECONDS - PLANNED_SECONDS)));
            odds[frame] = Math.max(odds[frame], (float) (UNPLANNED + part * (PLANNED - UNPLANNED)));
        }
    }

    float at(int word, int frame) {
        return odds[word][frame];
    }
}
