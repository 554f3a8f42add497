package cuelead.sheet;

import cuelead.dance.Foot;
import cuelead.sheet.RepeatCall.Source;
import cuelead.sheet.Token.Kind;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Reads what a call tells to dance again, with which foot and how often.
 *
 * @param tokens of the line
 * @param head   index of the word that calls; -1 where a part of the dance is only named
 */
record RepeatReader(List<Token> tokens, int head) {
    private static final Set<String> LEADS = Set.of(
            "leading", "lead", "starting", "start", "beginning", "begin", "commencing", "with", "on", "to", "using");
    private static final Set<String> COUNTS = Set.of("count", "counts", "beat", "beats", "steps", "cts");
    private static final Set<String> LAST = Set.of("last", "previous", "above", "preceding");

    Optional<RepeatCall> read(String text, int from) {
        Optional<Source> source = source(text);
        boolean mirror = words(RepeatCall.MIRROR);
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
                return Optional.of(section > 0 ? new Source.Numbered(section, 1, counts) : new Source.Range(1, counts));
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
            if (isWord(i, RepeatCall.SECTIONS) && isNumber(i + 1)) {
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
        if (number && isWord(i - 1, RepeatCall.SECTIONS)) {
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
            return Optional.of(numbered(text, i, Integer.parseInt(token.text().substring(1))));
        }
        return Optional.empty();
    }

    /** "S6 counts 1-4" */
    private Source numbered(String text, int at, int number) {
        int next = isWord(at + 1, COUNTS) ? at + 2 : at + 1;
        Optional<Source.Range> inner = next < tokens.size() && tokens.get(next).is(Kind.NUMBER)
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

    /** "II": the number of a section; 0 where it is none. */
    static int roman(Token token) {
        int index = token.is(Kind.WORD) ? ROMAN.indexOf(token.text()) : -1;
        return index < 0 ? 0 : index + 2;
    }

    private static final List<String> ROMAN = List.of("ii", "iii", "iv", "v", "vi", "vii", "viii", "ix", "x");
}
