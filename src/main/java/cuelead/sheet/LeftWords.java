package cuelead.sheet;

import java.util.List;
import java.util.Optional;

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

    /** Tells of the phrases that were not understood: with counts of their own they are mistakes, else asides. */
    void unread(List<Phrase> phrases, List<Integer> sizes) {
        for (int i = 0; i < phrases.size() && !problems.isUnheard(); i++) {
            Phrase phrase = phrases.get(i);
            if (!phrase.readable() && sizes.get(i) == 0) {
                aside(phrase);
            } else if (!phrase.readable()) {
                noAction(phrase.column(), phrase.left());
                int end = i + 1 < phrases.size() ? phrases.get(i + 1).column() : Integer.MAX_VALUE;
                problems.unread(new Problems.Span(line, phrase.column(), end, Problems.Extent.ACTION));
            }
        }
    }

    private void aside(Phrase phrase) {
        problems.note(
                "aside",
                line,
                phrase.column(),
                "These words are taken for an aside: no count is left for them.",
                "If something is danced here, write its count.");
    }

    /** A clause that begins at {@code clauseColumn} and has no action; {@code unknown} are its strange words. */
    private void noAction(int clauseColumn, List<Term> unknown) {
        int column = unknown.isEmpty() ? clauseColumn : unknown.get(0).column();
        if (unknown.stream().map(Term::text).anyMatch(NotUnderstood::isWord)) {
            problems.error("unread", line, column, MARKED, "Write in their place what is danced.");
            return;
        }
        String words = unknown.isEmpty() ? "these words" : "\"" + unknown.get(0).text() + "\"";
        problems.error("unread", line, column, "This action is not understood at " + words + ".", suggestion(unknown));
    }

    private static final String MARKED = "The words in these brackets are marked as not understood.";

    private String suggestion(List<Term> unknown) {
        return unknown.stream()
                .flatMap(term -> vocabulary.nearest(term.text()).stream())
                .findFirst()
                .map(near -> "Did you mean \"" + near + "\"?")
                .orElse("Write foot, action and direction, such as \"step R to side\", or the name of a figure.");
    }

    /** A word beside an action; where the action is clear without it, it is styling unless it is a word of the trade. */
    void strange(Term term, boolean isClear) {
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
        Optional<String> near = vocabulary.nearest(term.text());
        String sentence = "The word \"" + term.text() + "\" is not known.";
        if (isClear) {
            problems.note("styling_left_out", line, term.column(), sentence, "It is taken for styling.");
            return;
        }
        String tryThis = near.map(word -> "Did you mean \"" + word + "\"?")
                .orElse("If it is only styling, put it in round brackets.");
        problems.warning("unread", line, term.column(), sentence, tryThis);
    }

    /** What follows "while". */
    void styling(Term term) {
        problems.note(
                "styling_left_out",
                line,
                term.column(),
                "What follows \"" + term.text() + "\" is taken for styling.",
                "If it takes a count of its own, part it with a comma.");
    }

    /** A word with a slip of the pen is read as the one that it must be. */
    void misspelt(Term term) {
        term.meant()
                .ifPresent(meant -> problems.note(
                        "misspelt",
                        line,
                        term.column(),
                        "\"" + term.text() + "\" is read as \"" + meant + "\".",
                        "Check the spelling."));
    }
}
