package cuelead.sheet;

import cuelead.dance.Foot;
import cuelead.sheet.Token.Kind;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * "Repeat 1-4", "repeat section 1 on opposite feet", "repeat the last 8 counts leading with left", "mirror 1-4", "as
 * counts 1-4".
 *
 * @param source what is danced again
 * @param lead   the foot that it now begins with, where that is said
 * @param mirror whether it is said to go to the other side
 * @param times  how often it is danced
 */
record RepeatCall(Source source, Optional<Foot> lead, boolean mirror, int times) {
    private static final Set<String> HEADS =
            Set.of("repeat", "repeats", "repeating", "mirror", "reverse", "same", "rpt", "as", "like");
    static final Set<String> MIRROR =
            Set.of("opposite", "mirror", "mirrored", "mirroring", "reverse", "reversed", "reversing", "other");
    static final Set<String> SECTIONS = Set.of("section", "sections", "s", "sec", "part", "set");

    /** One of them stands in every call; most lines have none. */
    private static final Set<String> TELLING = Stream.of(
                    HEADS, MIRROR, ShortRepeat.SAME, Set.of("and", "now", "again", "more", "another"))
            .flatMap(Set::stream)
            .collect(Collectors.toUnmodifiableSet());

    /** What is danced again. */
    sealed interface Source {
        /** Whole counts as the sheet numbers them. */
        record Range(int first, int last) implements Source {}

        /** A section by its number, and which of its counts; last 0 = all. */
        record Numbered(int number, int first, int last) implements Source {}

        /** So many counts before this line; 0 = as many as fit. */
        record Before(int counts) implements Source {}
    }

    /** "5-8 the same again" */
    static boolean isCounted(String text) {
        return CountGroup.read(text).flatMap(group -> read(text, group.end())).isPresent();
    }

    /** Empty where the words from this index on do not begin so. */
    static Optional<RepeatCall> read(String text, int from) {
        if (Scanner.tokens(text, from).stream().map(Token::text).noneMatch(TELLING::contains)) {
            return Optional.empty();
        }
        return whole(text, from)
                .or(() -> first(SaidBehind.before(text, from), text, from))
                .or(() -> first(SaidBehind.sentence(text, from), text, from)
                        .filter(call -> !(call.source() instanceof Source.Before)));
    }

    /** "Do 1 to 4 again. Strut it like you own the place!": what is said behind the call dances nothing else. */
    private static Optional<RepeatCall> first(String sentence, String text, int from) {
        return sentence.length() < text.length() ? whole(sentence, from) : Optional.empty();
    }

    private static Optional<RepeatCall> whole(String text, int from) {
        return ShortRepeat.read(text, from).or(() -> told(text, from));
    }

    private static Optional<RepeatCall> told(String text, int from) {
        List<Token> tokens = Scanner.tokens(text, from).stream()
                .filter(token -> !token.is(Kind.MARK) || token.text().equals("-"))
                .toList();
        int at = 0;
        while (at < tokens.size()
                && (!tokens.get(at).is(Kind.WORD)
                        || Set.of("then", "and").contains(tokens.get(at).text()))) {
            at++;
        }
        boolean more = from > 0 && isOneMore(tokens, text);
        if (more) {
            return Optional.of(new RepeatCall(new Source.Before(0), Optional.empty(), false, 1));
        }
        if (at < tokens.size() && isDoneAgain(tokens.subList(at, tokens.size()), text, from)) {
            return new RepeatReader(tokens, at)
                    .read(text, from)
                    .or(() -> Optional.of(new RepeatCall(new Source.Before(0), Optional.empty(), false, 1)));
        }
        if (at >= tokens.size() || !HEADS.contains(tokens.get(at).text()) || namesFigure(tokens, at, text)) {
            return Optional.empty();
        }
        boolean as = tokens.get(at).isWord("as")
                && at + 1 < tokens.size()
                && !tokens.get(at + 1).is(Kind.NUMBER)
                && !AS_IN.contains(tokens.get(at + 1).text())
                && !isSection(tokens.get(at + 1))
                && RepeatReader.roman(tokens.get(at + 1)) == 0;
        return as ? Optional.empty() : new RepeatReader(tokens, at).read(text, from);
    }

    /** "Reverse rumba box: side, together, back": a figure of its own, with its steps behind it. */
    private static boolean namesFigure(List<Token> tokens, int at, String text) {
        if (!MIRROR.contains(tokens.get(at).text())) {
            return false;
        }
        List<String> words = Vocabulary.STANDARD.terms(tokens.subList(at, tokens.size())).stream()
                .map(Term::meaning)
                .toList();
        boolean isName = Vocabulary.STANDARD.figureNames().beginningWith(words.get(0)).stream()
                .map(FigureNames.FigureName::words)
                .anyMatch(name -> name.size() <= words.size() && name.equals(words.subList(0, name.size())));
        boolean isFigure = at + 1 < tokens.size()
                && Vocabulary.STANDARD.terms(List.of(tokens.get(at + 1))).stream()
                        .anyMatch(term -> term.is(Term.Kind.FIGURE_WORD));
        return isName || (isFigure && !DanceLine.movesNothing(text.substring(Math.max(0, text.indexOf(':')))));
    }

    private static final Set<String> AS_IN =
            Set.of("count", "counts", "section", "above", "steps", "in", "for", "figure", "part", "set");

    /** "One more V", "another of those", where no step is told. */
    private static boolean isOneMore(List<Token> tokens, String text) {
        String words = String.join(" ", tokens.stream().map(Token::text).toList());
        return ONE_MORE.matcher(words).find() && !new LineFit().fits(text);
    }

    private static final Pattern ONE_MORE =
            Pattern.compile("^(?:and )?(?:one more|once more|another)(?: (?!left|right|l\\b|r\\b)\\w+){0,3}$");

    /** "Do these four beats again", "dance that once more": no step is told. */
    private static boolean isDoneAgain(List<Token> tokens, String text, int from) {
        boolean done = DOES.contains(tokens.get(0).text())
                || AGAIN.contains(tokens.get(0).text());
        boolean again = tokens.stream().anyMatch(token -> AGAIN.contains(token.text()));
        boolean wall = tokens.stream().anyMatch(token -> token.isWord("wall") || token.isWord("walls"));
        return done && again && !wall && !hasSteps(text, from);
    }

    private static final Set<String> AGAIN = Set.of("again", "more");

    private static final Set<String> DOES = Set.of("do", "dance", "add", "the", "first", "counts", "just");

    /** Words in brackets only say what is danced there. */
    private static boolean hasSteps(String text, int from) {
        String told = text.substring(from).replaceAll("\\([^)]*\\)", " ");
        return !DanceLine.movesNothing(told);
    }

    /** "Tag: S6 counts 1-4, x2": a part of the dance is named and nothing else. */
    static Optional<RepeatCall> named(String text, int from) {
        List<Token> tokens = Scanner.tokens(text, from).stream()
                .filter(token -> !token.is(Kind.MARK) || token.text().equals("-"))
                .toList();
        if (tokens.isEmpty()) {
            return Optional.empty();
        }
        boolean section = isSection(tokens.get(0));
        boolean done = DOES.contains(tokens.get(0).text()) && !hasSteps(text, from);
        return section || done ? new RepeatReader(tokens, -1).read(text, from) : Optional.empty();
    }

    /** "Section", or "S1" in one word. */
    private static boolean isSection(Token token) {
        return token.is(Kind.WORD)
                && (SECTIONS.contains(token.text())
                        || SHORT_SECTION.matcher(token.text()).matches());
    }

    private static final Pattern SHORT_SECTION = Pattern.compile("s\\d{1,2}");

    /** "Repeat counts 1-32" below 32 counts: the dance begins again. */
    boolean isOfAll(int written) {
        return written > SHORTEST_DANCE
                && source instanceof Source.Range range
                && range.first() == 1
                && range.last() >= written
                && lead.isEmpty()
                && !mirror;
    }

    private static final int SHORTEST_DANCE = 8;

    /** Whole counts that it takes, where it says them itself; else those of a section. */
    int length(int sectionLength) {
        int once = sectionLength;
        if (source instanceof Source.Range range) {
            once = range.last() - range.first() + 1;
        } else if (source instanceof Source.Numbered numbered && numbered.last() > 0) {
            once = numbered.last() - numbered.first() + 1;
        } else if (source instanceof Source.Before before && before.counts() > 0) {
            once = before.counts();
        }
        return once * times;
    }
}
