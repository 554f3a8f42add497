package cuelead.window.words;

import cuelead.steer.WordDesk;
import cuelead.voice.Mark;
import java.util.List;
import java.util.Optional;

/**
 * What is shown of the words.
 *
 * @param words  all that the dance is called with
 * @param at     which of them it is now, from 0
 * @param phase  what is done with it
 * @param told   the same in a sentence
 * @param shape  of its take or recording, where there is one
 * @param mark   where that is felt
 * @param level  of the microphone, 0 to {@value #FULL_LEVEL}; 0 while it is not open
 * @param isRow  whether it goes from word to word by itself
 * @param can    what can be done with it now
 */
record WordsScene(
        List<Word> words,
        int at,
        WordDesk.Phase phase,
        String told,
        Optional<TakeShape> shape,
        Optional<Mark> mark,
        int level,
        boolean isRow,
        Can can) {
    /** A step is 2 dB. */
    static final int FULL_LEVEL = 30;

    private static final double STEP_DB = 2;

    WordsScene {
        words = List.copyOf(words);
    }

    /** One word, and whether it is heard as it was recorded. */
    record Word(String text, boolean isRecorded) {}

    /** What can be done. */
    record Can(boolean keep, boolean takeBack) {}

    String word() {
        return words.get(at).text();
    }

    long recorded() {
        return words.stream().filter(Word::isRecorded).count();
    }

    /** Steps from 60 dB below full scale up. */
    static int level(double peak) {
        double db = peak > 0 ? 20 * Math.log10(peak) : Double.NEGATIVE_INFINITY;
        return (int) Math.max(0, Math.min(FULL_LEVEL, FULL_LEVEL + Math.round(db / STEP_DB)));
    }
}
