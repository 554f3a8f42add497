package cuelead.compose;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A word of a score and where it stands.
 *
 * @param line   1-based
 * @param column 1-based
 */
record Word(String text, int line, int column) {
    private static final Pattern WORDS = Pattern.compile("\\||[^\\s|]+");

    /** The words of a line from a column on; a bar line is a word of its own. */
    static List<Word> of(String line, int lineNumber, int fromColumn) {
        List<Word> words = new ArrayList<>();
        Matcher matcher = WORDS.matcher(line);
        int from = fromColumn - 1;
        while (matcher.find(from)) {
            words.add(new Word(matcher.group(), lineNumber, matcher.start() + 1));
            from = matcher.end();
        }
        return words;
    }

    boolean isBarLine() {
        return text.equals("|");
    }

    /** The part of this word that begins {@code offset} characters in. */
    Word from(int offset) {
        return new Word(text.substring(offset), line, column + offset);
    }

    Word upTo(int offset) {
        return new Word(text.substring(0, offset), line, column);
    }

    /** Cuts this word at each separator; empty pieces stay. */
    List<Word> cutAt(char separator) {
        List<Word> pieces = new ArrayList<>();
        int start = 0;
        for (int i = 0; i <= text.length(); i++) {
            if (i == text.length() || text.charAt(i) == separator) {
                pieces.add(from(start).upTo(i - start));
                start = i + 1;
            }
        }
        return pieces;
    }
}
