package cuelead.rehearse;

import cuelead.dsp.speech.MelBands;
import cuelead.dsp.speech.PhoneOdds;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/**
 * The row of words and silences that fits a take best: every word is a chain of its sounds, and the best path through all
 * chains is found frame by frame (Viterbi search by passing tokens: Young, Russell and Thornton 1989, "Token passing: a
 * simple conceptual model for connected speech recognition systems"). To begin a word costs something; less where the
 * {@link WordOdds plan} has it at about that time.
 */
final class WordSearch {
    /** Every sound lasts 20 ms at least: it has two states, and only the second may be stayed in. */
    private static final int STATES_A_PHONE = 2;

    /** A word of so many sounds takes no longer: what goes on is a hiss of the room. */
    private static final double LONGEST_SECONDS = 0.5;

    private static final double LONGEST_PHONE_SECONDS = 0.2;
    private static final float NEVER = -1e9f;
    /** A frame says less than it seems to, since its neighbours say the same. */
    private static final float WEIGHT = 0.3f;

    /** A word on the best path so far; null before the first. */
    private record Token(int word, int startFrame, int endFrame, Token before) {}

    private final List<Pronounced> words;
    private final PhoneOdds odds;
    private final WordOdds entry;
    private final int[] firstState;
    private final int[] phoneOf;
    private float[] score;
    private float[] nextScore;
    private int[] start;
    private int[] nextStart;
    private Token[] history;
    private Token[] nextHistory;

    /** @param entry what it costs to begin a word at a frame */
    WordSearch(List<Pronounced> words, PhoneOdds odds, WordOdds entry) {
        this.words = words;
        this.odds = odds;
        this.entry = entry;
        firstState = new int[words.size() + 1];
        for (int word = 0; word < words.size(); word++) {
            firstState[word + 1] =
                    firstState[word] + STATES_A_PHONE * words.get(word).phones().size();
        }
        int states = firstState[words.size()];
        phoneOf = new int[states];
        for (int word = 0; word < words.size(); word++) {
            for (int i = firstState[word]; i < firstState[word + 1]; i++) {
                phoneOf[i] = words.get(word).phones().get((i - firstState[word]) / STATES_A_PHONE);
            }
        }
        score = filled(states);
        nextScore = filled(states);
        start = new int[states];
        nextStart = new int[states];
        history = new Token[states];
        nextHistory = new Token[states];
    }

    private static float[] filled(int states) {
        float[] scores = new float[states];
        Arrays.fill(scores, NEVER);
        return scores;
    }

    /** The words in order; their centres are not known yet and lie at their beginnings. */
    List<HeardWord> find() {
        float silence = 0;
        Token silent = null;
        for (int frame = 0; frame < odds.frames(); frame++) {
            int ended = bestEnd();
            boolean leaves = ended >= 0 && score[lastState(ended)] > silence;
            float before = leaves ? score[lastState(ended)] : silence;
            Token path = leaves ? new Token(ended, start[lastState(ended)], frame, history[lastState(ended)]) : silent;
            for (int word = 0; word < words.size(); word++) {
                step(word, frame, before, path);
            }
            silence = before + WEIGHT * odds.at(PhoneOdds.SILENCE, frame);
            silent = path;
            swap();
        }
        int ended = bestEnd();
        boolean leaves = ended >= 0 && score[lastState(ended)] > silence;
        return heard(
                leaves ? new Token(ended, start[lastState(ended)], odds.frames(), history[lastState(ended)]) : silent);
    }

    private int lastState(int word) {
        return firstState[word + 1] - 1;
    }

    private int bestEnd() {
        int best = -1;
        for (int word = 0; word < words.size(); word++) {
            best = best < 0 || score[lastState(word)] > score[lastState(best)] ? word : best;
        }
        return best;
    }

    private void step(int word, int frame, float before, Token path) {
        int sounds = words.get(word).phones().size();
        int most = (int) ((LONGEST_SECONDS + sounds * LONGEST_PHONE_SECONDS) / MelBands.STEP_SECONDS);
        for (int i = lastState(word); i >= firstState[word]; i--) {
            boolean isFirst = i == firstState[word];
            boolean mayStay = (i - firstState[word]) % STATES_A_PHONE == STATES_A_PHONE - 1;
            float stayed = mayStay && frame - start[i] < most ? score[i] : NEVER;
            float came = isFirst ? before + entry.at(word, frame) : score[i - 1];
            float best = Math.max(stayed, came);
            nextScore[i] = best <= NEVER ? NEVER : best + WEIGHT * odds.at(phoneOf[i], frame);
            boolean stays = stayed >= came;
            nextStart[i] = stays ? start[i] : isFirst ? frame : start[i - 1];
            nextHistory[i] = stays ? history[i] : isFirst ? path : history[i - 1];
        }
    }

    private void swap() {
        float[] scores = score;
        score = nextScore;
        nextScore = scores;
        int[] starts = start;
        start = nextStart;
        nextStart = starts;
        Token[] histories = history;
        history = nextHistory;
        nextHistory = histories;
    }

    private List<HeardWord> heard(Token last) {
        List<HeardWord> heard = new ArrayList<>();
        for (Token token = last; token != null; token = token.before()) {
            double begins = token.startFrame() * MelBands.STEP_SECONDS;
            heard.add(new HeardWord(
                    words.get(token.word()).word(), begins, begins, token.endFrame() * MelBands.STEP_SECONDS));
        }
        Collections.reverse(heard);
        return heard;
    }
}
