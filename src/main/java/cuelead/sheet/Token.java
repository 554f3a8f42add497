package cuelead.sheet;

/**
 * A piece of a line: a word, a number, a mark.
 *
 * @param kind   what it is
 * @param text   lower case and without accents for words, the fraction or clock time in plain figures, the words
 *               within the quotes for quoted text
 * @param column 1-based column where it begins
 */
record Token(Kind kind, String text, int column) {
    enum Kind {
        WORD,
        NUMBER,
        /** A number that tells which one: "3rd". */
        ORDINAL,
        FRACTION,
        CLOCK,
        SEPARATOR,
        AMPERSAND,
        OPEN,
        CLOSE,
        QUOTED,
        UNCLOSED_QUOTE,
        MARK
    }

    /** An ordinal is a number too. */
    boolean is(Kind other) {
        return kind == other || (kind == Kind.ORDINAL && other == Kind.NUMBER);
    }

    boolean isWord(String word) {
        return kind == Kind.WORD && text.equals(word);
    }

    /** Joins two words of one name. */
    boolean isHyphen() {
        return kind == Kind.MARK && text.equals("-");
    }
}
