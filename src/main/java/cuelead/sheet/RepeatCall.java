package cuelead.sheet;

import cuelead.dance.Foot;
import cuelead.sheet.Token.Kind;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

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
    private static final Set<String> MIRROR =
            Set.of("opposite", "mirror", "mirrored", "mirroring", "reverse", "reversed", "reversing", "other");
    private static final Set<String> LEADS = Set.of(
            "leading", "lead", "starting", "start", "beginning", "begin", "commencing", "with", "on", "to", "using");
    private static final Set<String> SECTIONS = Set.of("section", "sections", "s", "sec", "part", "set");
    private static final Set<String> COUNTS = Set.of("count", "counts", "beat", "beats", "steps", "cts");
    private static final Set<String> LAST = Set.of("last", "previous", "above", "preceding");

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
            return new Reader(tokens, at)
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
                && roman(tokens.get(at + 1)) == 0;
        return as ? Optional.empty() : new Reader(tokens, at).read(text, from);
    }

    /** "Reverse rumba box: side, together, back": a figure of its own, with its steps behind it. */
    private static boolean namesFigure(List<Token> tokens, int at, String text) {
        boolean turned = MIRROR.contains(tokens.get(at).text());
        return turned
                && at + 1 < tokens.size()
                && Vocabulary.STANDARD.terms(List.of(tokens.get(at + 1))).stream()
                        .anyMatch(term -> term.is(Term.Kind.FIGURE_WORD))
                && !DanceLine.movesNothing(text.substring(Math.max(0, text.indexOf(':'))));
    }

    private static final Set<String> AS_IN =
            Set.of("count", "counts", "section", "above", "steps", "in", "for", "figure", "part", "set");

    /** "II": the number of a section; 0 where it is none. */
    private static int roman(Token token) {
        int index = token.is(Kind.WORD) ? ROMAN.indexOf(token.text()) : -1;
        return index < 0 ? 0 : index + 2;
    }

    private static final List<String> ROMAN = List.of("ii", "iii", "iv", "v", "vi", "vii", "viii", "ix", "x");

    /** "One more V", "another of those", where no step is told. */
    private static boolean isOneMore(List<Token> tokens, String text) {
        String words = String.join(" ", tokens.stream().map(Token::text).toList());
        return ONE_MORE.matcher(words).find() && !LineFit.fits(text);
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

    private record Reader(List<Token> tokens, int head) {
        Optional<RepeatCall> read(String text, int from) {
            Optional<Source> source = source(text);
            boolean mirror = words(MIRROR);
            Optional<Foot> lead = lead();
            boolean said = mirror || lead.isPresent();
            return source.or(() -> said && from >= 0 ? Optional.of(new Source.Before(0)) : Optional.empty())
                    .map(found -> new RepeatCall(found, lead, mirror, times()));
        }

        private Optional<Source> source(String text) {
            Optional<Source> inner = first().or(() -> ofSection(text));
            for (int i = head + 1; i < tokens.size(); i++) {
                Optional<Source> found = inner.isPresent() ? inner : sourceAt(text, i);
                if (found.isPresent()) {
                    return found;
                }
            }
            return Optional.empty();
        }

        /** "the first 4 counts of section 3", "the first 8 counts" */
        private Optional<Source> first() {
            for (int i = Math.max(0, head); i + 2 < tokens.size(); i++) {
                if (isWord(i, Set.of("first")) && isNumber(i + 1) && isWord(i + 2, COUNTS)) {
                    int counts = Integer.parseInt(tokens.get(i + 1).text());
                    int section = section();
                    return Optional.of(
                            section > 0 ? new Source.Numbered(section, 1, counts) : new Source.Range(1, counts));
                }
            }
            return Optional.empty();
        }

        /** "counts 1-4 of section 3" */
        private Optional<Source> ofSection(String text) {
            int section = section();
            for (int i = Math.max(0, head); i + 1 < tokens.size() && section > 0; i++) {
                boolean of = tokens.stream().skip(i).anyMatch(token -> token.isWord("of") || token.isWord("in"));
                if (of && isWord(i, COUNTS) && isNumber(i + 1)) {
                    return range(text, tokens.get(i + 1).column() - 1)
                            .map(Source.Range.class::cast)
                            .map(range -> new Source.Numbered(section, range.first(), range.last()));
                }
            }
            return Optional.empty();
        }

        /** The number of the section that is named; 0 where none is. */
        private int section() {
            for (int i = Math.max(0, head); i + 1 < tokens.size(); i++) {
                if (isWord(i, SECTIONS) && isNumber(i + 1)) {
                    return Integer.parseInt(tokens.get(i + 1).text());
                }
            }
            return 0;
        }

        private boolean isNumber(int at) {
            return at < tokens.size()
                    && tokens.get(at).is(Kind.NUMBER)
                    && tokens.get(at).text().length() <= 3;
        }

        private Optional<Source> sourceAt(String text, int i) {
            Token token = tokens.get(i);
            boolean number = token.is(Kind.NUMBER) && token.text().length() <= 3;
            if (number && isWord(i - 1, SECTIONS)) {
                return Optional.of(numbered(text, i, Integer.parseInt(token.text())));
            }
            if (roman(token) > 1) {
                return Optional.of(numbered(text, i, roman(token)));
            }
            if (number && (isWord(i - 1, LAST) || isWord(i - 2, LAST) || isWord(i + 2, LAST))) {
                return Optional.of(new Source.Before(Integer.parseInt(token.text())));
            }
            if (number || token.is(Kind.AMPERSAND)) {
                return range(text, token.column() - 1);
            }
            boolean named = token.is(Kind.WORD) && token.text().matches("[a-ds]\\d{1,2}");
            if (named) {
                return Optional.of(
                        numbered(text, i, Integer.parseInt(token.text().substring(1))));
            }
            return Optional.empty();
        }

        /** "S6 counts 1-4" */
        private Source numbered(String text, int at, int number) {
            int next = isWord(at + 1, COUNTS) ? at + 2 : at + 1;
            Optional<Source.Range> inner =
                    next < tokens.size() && tokens.get(next).is(Kind.NUMBER)
                            ? range(text, tokens.get(next).column() - 1).map(Source.Range.class::cast)
                            : Optional.empty();
            return new Source.Numbered(
                    number,
                    inner.map(Source.Range::first).orElse(1),
                    inner.map(Source.Range::last).orElse(0));
        }

        /** "1-4", "1 to 4", "1&2 3&4", "1-8". */
        private static Optional<Source> range(String text, int index) {
            Optional<CountGroup> group =
                    CountGroup.read(text.replace(" to ", " -  ").replace(" thru ", " -    "), index);
            return group.map(found -> new Source.Range(
                            Math.max(1, found.counts().get(0).number()),
                            found.counts().get(found.counts().size() - 1).number()))
                    .filter(range -> range.last() > range.first())
                    .map(Source.class::cast);
        }

        private Optional<Foot> lead() {
            for (int i = tokens.size() - 1; i > head; i--) {
                boolean left = isWord(i, Set.of("left", "l", "lf"));
                boolean right = isWord(i, Set.of("right", "r", "rf"));
                boolean told =
                        isWord(i - 1, LEADS) || isWord(i - 2, LEADS) || isWord(i + 1, Set.of("lead", "foot", "side"));
                if ((left || right) && told) {
                    return Optional.of(left ? Foot.LEFT : Foot.RIGHT);
                }
            }
            return Optional.empty();
        }

        private int times() {
            boolean twice = words(Set.of("twice", "x2", "2x"));
            boolean thrice = words(Set.of("x3", "3x"));
            return twice ? 2 : thrice ? 3 : words(Set.of("x4", "4x")) ? 4 : 1;
        }

        private boolean words(Set<String> set) {
            for (int i = Math.max(0, head); i < tokens.size(); i++) {
                if (isWord(i, set)) {
                    return true;
                }
            }
            return false;
        }

        private boolean isWord(int at, Set<String> set) {
            return at >= 0
                    && at < tokens.size()
                    && tokens.get(at).is(Kind.WORD)
                    && set.contains(tokens.get(at).text());
        }
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
        boolean section = tokens.get(0).is(Kind.WORD)
                && (tokens.get(0).text().matches("s\\d{1,2}")
                        || SECTIONS.contains(tokens.get(0).text()));
        boolean done = DOES.contains(tokens.get(0).text()) && !hasSteps(text, from);
        return section || done ? new Reader(tokens, -1).read(text, from) : Optional.empty();
    }

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
