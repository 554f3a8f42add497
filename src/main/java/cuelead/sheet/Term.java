package cuelead.sheet;

/**
 * A word or phrase of a sheet with its meaning.
 *
 * @param kind    what sort of word
 * @param meaning the standard word for it
 * @param text    as written, in lower case
 * @param column  1-based column
 */
record Term(Kind kind, String meaning, String text, int column) {
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
        WEIGHT,
        COUNT,
        NUMBER,
        NEGATION,
        FILLER,
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
