package cuelead.compose;

import cuelead.report.Problem;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/** Collects the mistakes of one score while it is read. Not thread-safe. */
final class Complaints {
    /** Words this far apart (in single-letter edits) are still taken for a slip of the pen. */
    private static final int NEAR = 2;

    private final String file;
    private final List<Problem> problems = new ArrayList<>();

    Complaints(String file) {
        this.file = file;
    }

    void at(Word word, String kind, String sentence, String tryThis) {
        problems.add(new Problem(Problem.Severity.ERROR, kind, file, word.line(), word.column(), sentence, tryThis));
    }

    void atFile(String kind, String sentence, String tryThis) {
        problems.add(new Problem(Problem.Severity.ERROR, kind, file, 0, 0, sentence, tryThis));
    }

    /** A name that is none of the known ones: names the nearest, else all. */
    void unknown(Word word, String what, Collection<String> known) {
        String advice = nearest(word.text(), known)
                .map(name -> "Did you mean " + name + "?")
                .orElse(known.isEmpty() ? "" : "Known: " + String.join(", ", known) + ".");
        at(word, "unknown_" + what.replace(' ', '_'), "There is no " + what + " " + quoted(word) + ".", advice);
    }

    static String quoted(Word word) {
        return "\"" + word.text() + "\"";
    }

    List<Problem> problems() {
        return List.copyOf(problems);
    }

    private static Optional<String> nearest(String word, Collection<String> known) {
        return known.stream()
                .filter(name -> edits(word, name) <= NEAR)
                .min((a, b) -> Integer.compare(edits(word, a), edits(word, b)));
    }

    /** Levenshtein's distance: letters to insert, delete or replace. */
    private static int edits(String a, String b) {
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int replaced = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(replaced, 1 + Math.min(row[j], row[j - 1]));
            }
        }
        return row[b.length()];
    }
}
