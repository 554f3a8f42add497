package cuelead.lesson;

import cuelead.lesson.LineScanner.Found;
import java.util.regex.Pattern;

/**
 * Words that may stand in a line, and what they say of its pass.
 *
 * @param words   see {@link LineScanner#words}
 * @param meaning what they say
 */
record LineRule(Pattern words, Meaning meaning) {
    /** Notes what was found. */
    interface Meaning {
        void note(Found found, PassDraft draft) throws LessonMistake;
    }

    LineRule(String words, Meaning meaning) {
        this(LineScanner.words(words), meaning);
    }

    /** Whether the line goes on with these words; then they are noted. */
    boolean applies(LineScanner line, PassDraft draft) throws LessonMistake {
        var found = line.next(words);
        if (found.isPresent()) {
            meaning.note(found.get(), draft);
        }
        return found.isPresent();
    }
}
