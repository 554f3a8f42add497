package cuelead.sheet;

import cuelead.dance.Action;
import cuelead.dance.Section;
import cuelead.dance.Step;
import cuelead.dance.Weight;
import cuelead.english.NumberWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * Steps that an ending names to put others in their place: "replace the stomps with ...", "instead of the last 2 counts".
 *
 * @param words what it names
 * @param from  0-based index where it begins to say so
 * @param to    0-based index behind it
 */
record ReplacedSteps(String words, int from, int to) {
    private static final Pattern REPLACED = Pattern.compile(
            "\\b(?:replac|substitut|swap)\\w*\\s+([^:;.]{1,60}?)\\s+(?:with|by|for)\\b"
                    + "|\\bchang\\w*\\s+([^:;.]{1,60}?)\\s+(?:to|into|for)\\b(?!\\s+the\\s+(?:left|right|side))"
                    + "|\\binstead of\\s+([^,;:.]{1,60})",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern LAST_COUNTS =
            Pattern.compile("\\b(?:last|final)\\s+(\\w+)?\\s*(?:counts?|cts?|beats?)\\b", Pattern.CASE_INSENSITIVE);
    private static final Pattern OTHERS =
            Pattern.compile("\\b(?:walls?|restart\\w*|counts?|weight)\\b", Pattern.CASE_INSENSITIVE);
    private static final Pattern SMALL =
            Pattern.compile("\\b(?:the|your|a|an|these|those|final|last|two|both)\\b", Pattern.CASE_INSENSITIVE);
    /** Words; where more stand behind "instead of", the new steps may be among them. */
    private static final int MOST_WORDS = 4;

    static Optional<ReplacedSteps> in(String line) {
        Matcher replaced = REPLACED.matcher(line);
        return replaced.find()
                ? Optional.of(new ReplacedSteps(words(replaced), replaced.start(), replaced.end()))
                : Optional.empty();
    }

    private static String words(Matcher replaced) {
        String first = replaced.group(1) == null ? replaced.group(2) : replaced.group(1);
        return first == null ? replaced.group(3) : first;
    }

    /** Whether it names steps, and not the weight or the music. */
    boolean areSteps() {
        return LAST_COUNTS.matcher(words).find()
                || (DanceLine.isDanced(words) && !OTHERS.matcher(words).find());
    }

    /** Whether the words end before the new steps begin: nothing parts "instead of the stomps step forward". */
    boolean areParted(String line) {
        boolean mixed = line.substring(from, to).toLowerCase(Locale.ROOT).startsWith("instead");
        boolean atEnd = line.substring(to).isBlank();
        return !mixed || atEnd || words.strip().split("\\s+", -1).length <= MOST_WORDS;
    }

    /**
     * The last count before them. Where they are not found they are the last ones, as many as the {@code length} in counts
     * of what is danced instead.
     */
    OptionalInt lastBefore(List<Section> sections, int length) {
        int counts = sections.stream().mapToInt(Section::length).sum();
        Matcher last = LAST_COUNTS.matcher(words);
        if (last.find()) {
            int told = number(last.group(1), length);
            return told < counts ? OptionalInt.of(counts - told) : OptionalInt.empty();
        }
        OptionalInt named = beforeNamed(sections);
        return named.isPresent() || length >= counts ? named : OptionalInt.of(counts - length);
    }

    private static int number(String word, int otherwise) {
        if (word == null) {
            return 1;
        }
        return Scanner.isDigit(word.charAt(0))
                ? Integer.parseInt(word.replaceAll("\\D.*", ""))
                : NumberWords.value(word.toLowerCase(Locale.ROOT)).orElse(otherwise);
    }

    /** One action in the plural stands for all of its kind that follow each other; else they are a row of actions. */
    private OptionalInt beforeNamed(List<Section> sections) {
        List<Move> named = moves(SMALL.matcher(words).replaceAll(" "));
        List<Step> steps = new ArrayList<>();
        List<Integer> before = new ArrayList<>();
        int counts = 0;
        for (Section section : sections) {
            for (Step step : section.steps()) {
                steps.add(step);
                before.add(counts + step.count().number() - 1);
            }
            counts += section.length();
        }
        int length = named.size();
        boolean all = length == 1 && PLURAL.matcher(words).find();
        for (int i = steps.size() - length; i >= 0 && length > 0; i--) {
            if (areNamed(steps.subList(i, i + length), named)) {
                int first = i;
                while (all && first > 0 && isNamed(steps.get(first - 1), named.get(0))) {
                    first--;
                }
                return OptionalInt.of(before.get(first));
            }
        }
        return OptionalInt.empty();
    }

    private static final Pattern PLURAL =
            Pattern.compile("\\b(?!across|cross|pass)\\w{3,}s\\b", Pattern.CASE_INSENSITIVE);

    private boolean namesFeet() {
        return Vocabulary.STANDARD.terms(Scanner.tokens(words)).stream().anyMatch(term -> term.is(Term.Kind.FOOT));
    }

    private boolean areNamed(List<Step> steps, List<Move> named) {
        return IntStream.range(0, named.size()).allMatch(i -> isNamed(steps.get(i), named.get(i)));
    }

    private boolean isNamed(Step step, Move named) {
        boolean foot = !namesFeet()
                || named.foot().isEmpty()
                || step.foot().isEmpty()
                || step.foot().equals(named.foot());
        return foot && plain(step.action()) == plain(named.action());
    }

    private static Action plain(Action action) {
        return STEPS.contains(action) ? Action.STEP : action;
    }

    /** Words for a step onto a foot that authors use for each other. */
    private static final Set<Action> STEPS = Set.of(Action.STEP, Action.WALK, Action.CLOSE);

    private static List<Move> moves(String prose) {
        List<Phrase> phrases = LineFit.phrases(prose);
        if (!LineFit.areReadable(phrases)) {
            return List.of();
        }
        MoveMaker maker = new MoveMaker(Problems.unheard(), 0, new Footing(Weight.UNKNOWN));
        List<Move> moves = new ArrayList<>();
        for (int i = 0; i < phrases.size(); i++) {
            moves.addAll(maker.moves(phrases.get(i), Fitting.usual(phrases, i)));
        }
        return moves;
    }
}
