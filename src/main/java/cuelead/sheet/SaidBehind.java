package cuelead.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Sentences behind the steps of a line that are said and not danced: "pivot 1/2 left. Now you can see the back wall
 * (6:00).", "the same once more, so that you see the front wall again". What tells is that they have words which are no
 * words of the trade, and that the steps fill their counts without them.
 */
final class SaidBehind {
    private static final Pattern BOUNDARY = Pattern.compile(
            "[.!?;]+[\"')]*\\s+(?=[\\p{L}(])|\\s[-\u2013\u2014]+\\s+"
                    + "|[,;]?\\s+(?=[satynw])(?=(?:so (?:that|you|now|we)|and (?:that|you|now|it)|that(?:'s| is| puts| brings| makes)|then (?:start|begin|we|you|go)|and (?:start|begin)|you'?(?:ll|re)?"
                    + "|now|we'?(?:ll|re)?)\\b)",
            Pattern.CASE_INSENSITIVE);

    private static final int FEWEST_STRANGE_WORDS = 2;

    private SaidBehind() {}

    /** The line with spaces for what is only said in it, but for where the dancers face; empty where nothing is. */
    static Optional<String> left(String text, int from, LineFit fit) {
        List<Integer> ends = ends(text, from);
        int to = text.length();
        for (int i = ends.size() - 1; i >= 0 && isSaid(text, ends.get(i), to); i--) {
            String danced = blanked(text, ends.get(i));
            if (fit.fitsWhole(danced)) {
                return Optional.of(danced);
            }
            to = ends.get(i);
        }
        return Optional.empty();
    }

    /** What stands before the first of such sentences, where all behind it is said; the text itself where nothing is. */
    static String before(String text, int from) {
        String before = text;
        List<Integer> ends = ends(text, from);
        for (int i = ends.size() - 1; i >= 0 && isSaid(text, ends.get(i), before.length()); i--) {
            before = text.substring(0, ends.get(i));
        }
        return before;
    }

    /** The first sentence behind a 0-based index, with all that stands before it. */
    static String sentence(String text, int from) {
        Matcher end = STOP.matcher(text).region(from, text.length());
        return end.find() ? text.substring(0, end.start()) : text;
    }

    private static final Pattern STOP = Pattern.compile("(?<=\\p{L}\\p{L})[.!]+\\s+(?=\\p{Lu})");

    /** 0-based indices where a sentence or a remark may begin, but for the first one. */
    private static List<Integer> ends(String text, int from) {
        List<Integer> ends = new ArrayList<>();
        Matcher boundary = BOUNDARY.matcher(text).region(from, text.length());
        while (boundary.find()) {
            if (text.substring(from, boundary.start()).chars().anyMatch(Character::isLetter)) {
                ends.add(boundary.end());
            }
        }
        return ends;
    }

    /** Of what stands between two 0-based indices; all that is behind it is known to be said. */
    private static boolean isSaid(String text, int from, int to) {
        List<Term> terms = Vocabulary.STANDARD.terms(Scanner.tokens(text.substring(from, to)));
        long strange = terms.stream().filter(term -> term.is(Term.Kind.UNKNOWN)).count();
        long steps = terms.stream().filter(SaidBehind::isStep).count();
        boolean still = steps == 0 && terms.stream().noneMatch(SaidBehind::isOfFoot);
        return still
                || isShouted(text.substring(from))
                || (strange >= FEWEST_STRANGE_WORDS && strange > steps)
                || tellsWhere(text.substring(from));
    }

    /** "Strut it like you own the place!": no foot is told, and no turn. */
    private static boolean isShouted(String sentence) {
        return sentence.strip().endsWith("!")
                && Vocabulary.STANDARD.terms(Scanner.tokens(sentence)).stream()
                        .noneMatch(term -> isOfFoot(term) || term.is(Term.Kind.FRACTION));
    }

    private static boolean tellsWhere(String sentence) {
        List<Term> terms = Vocabulary.STANDARD.terms(Scanner.tokens(sentence));
        return TELLS.matcher(sentence).find()
                && terms.stream().anyMatch(term -> term.is(Term.Kind.CLOCK))
                && terms.stream().noneMatch(term -> isOfFoot(term) || term.is(Term.Kind.FRACTION));
    }

    private static boolean isOfFoot(Term term) {
        return term.is(Term.Kind.PART) || term.is(Term.Kind.FOOT);
    }

    /** "that puts you at 9:00": where the dancers are. */
    private static final Pattern TELLS =
            Pattern.compile("^\\W*(?:and |so )?(?:that|this|you|we|now|which)\\b", Pattern.CASE_INSENSITIVE);

    private static boolean isStep(Term term) {
        return term.is(Term.Kind.VERB)
                || term.is(Term.Kind.STEPPING)
                || term.is(Term.Kind.FIGURE_WORD)
                || term.is(Term.Kind.FRACTION);
    }

    private static String blanked(String text, int from) {
        StringBuilder blanked = new StringBuilder(text.substring(0, from));
        blanked.append(" ".repeat(text.length() - from));
        for (Token token : Scanner.tokens(text, from)) {
            if (token.is(Token.Kind.CLOCK)) {
                int at = token.column() - 1;
                int end = at;
                while (end < text.length() && "0123456789:.".indexOf(text.charAt(end)) >= 0) {
                    end++;
                }
                blanked.replace(at, end, text.substring(at, end));
            }
        }
        return blanked.toString();
    }
}
