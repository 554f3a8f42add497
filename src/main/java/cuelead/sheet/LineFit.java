package cuelead.sheet;

import java.util.List;
import java.util.Optional;

/** Whether the prose of a line fills its counts, tried without telling anyone. */
final class LineFit {
    private LineFit() {}

    static boolean fits(String line) {
        Optional<CountGroup> group = CountGroup.read(line);
        if (group.isEmpty()) {
            return false;
        }
        List<Phrase> phrases = phrases(line, group.get().end());
        return !phrases.isEmpty()
                && phrases.stream().allMatch(Phrase::readable)
                && Fitting.of(phrases, group.get().counts()).isPresent();
    }

    static List<Phrase> phrases(String line, int from) {
        List<Term> terms = Vocabulary.STANDARD.terms(Scanner.tokens(line, from));
        return new ProseParser(Vocabulary.STANDARD, new Problems(""), 0, terms).phrases();
    }
}
