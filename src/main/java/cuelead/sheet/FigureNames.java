package cuelead.sheet;

import cuelead.dance.FigureRow;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The names of the figures in standard words: found by their first word, or by all of them in any order. */
final class FigureNames {
    private static final int MOST_AROUND = 6;

    private final Map<String, List<FigureName>> byFirst = new HashMap<>();
    private final Map<Set<String>, FigureName> byWords = new HashMap<>();

    /**
     * A figure's name in standard words.
     *
     * @param isDistinct whether it has a word that names figures only, or begins with what is done
     */
    record FigureName(List<String> words, FigureRow row, boolean isDistinct) {
        FigureName {
            words = List.copyOf(words);
        }
    }

    /** A name in the terms of the vocabulary. */
    void add(List<Term> terms, FigureRow row) {
        List<String> words = terms.stream().map(Term::meaning).toList();
        boolean verbs = terms.size() > 1 && terms.get(0).is(Term.Kind.VERB);
        boolean own = terms.stream().anyMatch(term -> term.is(Term.Kind.FIGURE_WORD));
        FigureName name = new FigureName(words, row, verbs || own);
        byFirst.computeIfAbsent(words.get(0), first -> new ArrayList<>()).add(name);
        byWords.putIfAbsent(bag(words), name);
    }

    /** Longest first. */
    void sort() {
        byFirst.values()
                .forEach(names -> names.sort(Comparator.comparingInt(
                                (FigureName name) -> name.words().size())
                        .reversed()));
    }

    List<FigureName> beginningWith(String meaning) {
        return byFirst.getOrDefault(meaning, List.of());
    }

    /**
     * The figure that is named by the words of a name and as many as can be of the words around it: "mambo" and "side",
     * "chasse" and "1/4".
     */
    Optional<FigureRow> with(List<String> name, Set<String> around) {
        Set<String> core = bag(name);
        List<Set<String>> sets = new ArrayList<>(List.of(core));
        around.stream()
                .filter(word -> !core.contains(word) && !word.equals("turn"))
                .limit(MOST_AROUND)
                .forEach(word -> List.copyOf(sets).forEach(set -> sets.add(and(set, word))));
        return sets.stream()
                .skip(1)
                .filter(byWords::containsKey)
                .max(Comparator.comparingInt(Set::size))
                .map(set -> byWords.get(set).row());
    }

    private static Set<String> and(Set<String> set, String word) {
        Set<String> more = new HashSet<>(set);
        more.add(word);
        return more;
    }

    /** Without order; whether "turn" stands beside its fraction varies. */
    private static Set<String> bag(List<String> words) {
        Set<String> bag = new HashSet<>(words);
        if (bag.size() > 1) {
            bag.remove("turn");
        }
        return bag;
    }
}
