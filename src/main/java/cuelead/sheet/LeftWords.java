package cuelead.sheet;

import java.util.List;

/** Tells the user about words of a count line that are not understood, with the nearest known word. */
final class LeftWords {
    private final Vocabulary vocabulary;
    private final Problems problems;
    private final int line;

    LeftWords(Vocabulary vocabulary, Problems problems, int line) {
        this.vocabulary = vocabulary;
        this.problems = problems;
        this.line = line;
    }

    /** A clause that begins at {@code clauseColumn} and has no action; {@code unknown} are its strange words. */
    void noAction(int clauseColumn, List<Term> unknown) {
        if (problems.isUnheard()) {
            return;
        }
        int column = unknown.isEmpty() ? clauseColumn : unknown.get(0).column();
        String words = unknown.isEmpty() ? "these words" : "\"" + unknown.get(0).text() + "\"";
        problems.error("unread", line, column, "This action is not understood at " + words + ".", suggestion(unknown));
    }

    private String suggestion(List<Term> unknown) {
        return unknown.stream()
                .flatMap(term -> vocabulary.nearest(term.text()).stream())
                .findFirst()
                .map(near -> "Did you mean \"" + near + "\"?")
                .orElse("Write foot, action and direction, such as \"step R to side\", or the name of a figure.");
    }

    /** A word that stands beside an action which is understood without it. */
    void strange(Term term) {
        if (problems.isUnheard()) {
            return;
        }
        if (vocabulary.knows(term.text())) {
            problems.warning(
                    "unread",
                    line,
                    term.column(),
                    "\"" + term.text() + "\" is not understood behind the words before it.",
                    "Part two actions with a comma; put styling in round brackets.");
            return;
        }
        String tryThis = vocabulary
                .nearest(term.text())
                .map(near -> "Did you mean \"" + near + "\"?")
                .orElse("If it is only styling, put it in round brackets.");
        problems.warning("unread", line, term.column(), "The word \"" + term.text() + "\" is not known.", tryThis);
    }

    /** What follows "while". */
    void styling(Term term) {
        problems.warning(
                "styling_left_out",
                line,
                term.column(),
                "What follows \"" + term.text() + "\" is taken for styling.",
                "If it takes a count of its own, part it with a comma.");
    }
}
