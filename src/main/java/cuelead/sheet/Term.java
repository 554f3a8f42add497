package cuelead.sheet;

import java.util.Optional;

/**
 * A word or phrase of a sheet with its meaning.
 *
 * @param kind    what sort of word
 * @param meaning the standard word for it
 * @param text    as written, in lower case
 * @param column  1-based column
 * @param meant   the known word that it is taken for, where it is misspelt
 */
record Term(Kind kind, String meaning, String text, int column, Optional<String> meant) {
    /** A word that is written as it should be. */
    Term(Kind kind, String meaning, String text, int column) {
        this(kind, meaning, text, column, Optional.empty());
    }

    enum Kind {
        FOOT,
        VERB,
        STEPPING,
        LEADING,
        PART,
        PLACE,
        ONTO,
        TURN,
        FRACTION,
        LINK,
        WITH,
        DURING,
        OPTION,
        WEIGHT,
        COUNT,
        NUMBER,
        NEGATION,
        FILLER,
        /** A part of the body that takes no step: arms, head, hips. */
        BODY,
        FIGURE_WORD,
        CLOCK,
        SEPARATOR,
        OPEN,
        CLOSE,
        MARK,
        UNKNOWN
    }

    boolean is(Kind other) {
        return kind == other;
    }

    boolean is(Kind other, String otherMeaning) {
        return kind == other && meaning.equals(otherMeaning);
    }
}
