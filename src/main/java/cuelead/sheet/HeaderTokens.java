package cuelead.sheet;

import cuelead.dance.Foot;
import cuelead.sheet.Token.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;

/** A header line's tokens with a place in them; each method takes its pattern where it stands, or nothing. */
final class HeaderTokens {
    private static final Set<String> SMALL =
            Set.of("on", "onto", "the", "with", "your", "of", "to", "is", "a", "an", "about", "around", "foot");

    private static final Set<String> JOINING = Set.of(
            "and", "from", "in", "before", "after", "then", "start", "starts", "starting", "begin", "on", "with");

    private final List<Token> tokens;
    private final Set<String> words;
    private int at;
    private int taken = 1;

    HeaderTokens(List<Token> tokens) {
        this.tokens = SpelledNumbers.asNumbers(
                tokens.stream().filter(token -> !token.is(Kind.MARK)).toList());
        words = this.tokens.stream()
                .filter(token -> token.is(Kind.WORD))
                .map(Token::text)
                .collect(Collectors.toUnmodifiableSet());
    }

    /** 1-based column of the number or foot that was taken last. */
    int taken() {
        return taken;
    }

    boolean atEnd() {
        return at >= tokens.size();
    }

    void advance() {
        at++;
    }

    boolean holds(String word) {
        return words.contains(word);
    }

    boolean startsWith(Set<String> words) {
        return !tokens.isEmpty() && isOneOf(0, words);
    }

    /** Whether the line begins with one of these words and a colon or number, or a number and one of them. */
    boolean isAbout(String... words) {
        Set<String> set = Set.of(words);
        boolean key = isOneOf(0, set) && tokens.size() > 1 && !tokens.get(1).is(Kind.WORD);
        return key || (isNumber(0) && isOneOf(1, set));
    }

    /** "16 count intro" */
    OptionalInt numberThen(Set<String> unit, String word) {
        if (isNumber(at) && isOneOf(at + 1, unit) && isOneOf(at + 2, Set.of(word))) {
            return take(at, at + 3);
        }
        return OptionalInt.empty();
    }

    /** "Count:", "Wall:", "Level:" here, with the sign of a key. */
    boolean isKeyHere() {
        boolean key = isOneOf(at, Set.of("count", "counts", "wall", "walls", "level", "weight"));
        return key
                && at + 1 < tokens.size()
                && Set.of(":", "=").contains(tokens.get(at + 1).text());
    }

    /** A number at the head of the line, parted from what follows, on a line that tells of walls. */
    OptionalInt bareNumberFirst() {
        boolean walls = holds("w") || holds("wall") || holds("walls");
        boolean bare =
                at == 0 && isNumber(0) && tokens.size() > 1 && tokens.get(1).is(Kind.SEPARATOR);
        return walls && bare ? take(0, 1) : OptionalInt.empty();
    }

    /** "start dancing on count 17" */
    OptionalInt startOnCount() {
        if (!isOneOf(at, STARTING)) {
            return OptionalInt.empty();
        }
        int index = isOneOf(at + 1, Set.of("dancing", "the", "dance")) ? at + 2 : at + 1;
        boolean count = isOneOf(index, Set.of("on", "at")) && isOneOf(index + 1, Set.of("count", "beat"));
        return count && isNumber(index + 2) ? take(index + 2, index + 3) : OptionalInt.empty();
    }

    /** "Intro: 16", whatever its unit */
    OptionalInt wordThenNumber(Set<String> words) {
        if (!isOneOf(at, words)) {
            return OptionalInt.empty();
        }
        int number = afterSmallWords(at + 1);
        if (!isNumber(number)) {
            return OptionalInt.empty();
        }
        return take(number, number + 1);
    }

    /** The unit behind a number: a word beside it, which ends what is told where it is none of these. */
    Optional<Token> takeUnitHere(Set<String> units) {
        boolean beside = at > 0 && at < tokens.size() && isBeside(tokens.get(at - 1), tokens.get(at));
        boolean ends = at + 1 >= tokens.size() || !tokens.get(at + 1).is(Kind.WORD);
        boolean unit = beside && tokens.get(at).is(Kind.WORD) && (ends || isOneOf(at, units)) && !isOneOf(at, JOINING);
        return unit ? Optional.of(tokens.get(at++)) : Optional.empty();
    }

    /** Nothing but a space between them. */
    private static boolean isBeside(Token number, Token word) {
        return word.column() - number.column() - number.text().length() <= 1;
    }

    /** "64c"; "C = 8" is the length of a part. */
    OptionalInt numberBefore(Set<String> unit) {
        return isNumber(at) && isOneOf(at + 1, unit) ? take(at, at + 2) : OptionalInt.empty();
    }

    /**
     * "32 count", "Count: 32": a length where it is that of the whole dance, not "the first 16 counts", "8 counts after the
     * drums", "Count 8 beats in", "Tag: 4 counts".
     */
    OptionalInt lengthAround(Set<String> unit) {
        boolean before = isNumber(at) && isOneOf(at + 1, unit);
        boolean colon = at > 0 && at < tokens.size() && tokens.get(at - 1).is(Kind.SEPARATOR);
        boolean extra = isOneOf(colon ? at - 2 : at - 1, EXTRAS);
        boolean part = before && (extra || isOneOf(at - 1, PART_BEFORE) || isOneOf(at + 2, PART_BEHIND));
        boolean keyed = isOneOf(at, unit)
                && at + 1 < tokens.size()
                && tokens.get(at + 1).is(Kind.SEPARATOR);
        boolean counting = isOneOf(at, unit) && !keyed && isNumber(at + 1) && isOneOf(at + 2, unit);
        return part || counting ? OptionalInt.empty() : numberAround(unit);
    }

    private static final Set<String> PART_BEFORE = Set.of(
            "first", "last", "next", "after", "before", "every", "each", "extra", "another", "further", "additional");
    private static final Set<String> EXTRAS = Set.of("tag", "bridge");
    private static final Set<String> PART_BEHIND =
            Set.of("in", "intro", "before", "after", "from", "later", "tag", "bridge");

    /** "32 count", "4-wall", "Count: 32", "Walls 4" */
    OptionalInt numberAround(Set<String> unit) {
        if (isNumber(at) && isOneOf(at + 1, unit)) {
            return take(at, at + 2);
        }
        if (isOneOf(at, unit)) {
            int number = afterSmallWords(at + 1);
            return isNumber(number) ? take(number, number + 1) : OptionalInt.empty();
        }
        return OptionalInt.empty();
    }

    /** "Level: Easy Improver", or the name of a level alone. */
    Optional<String> levelWords(Set<String> grades, Set<String> names) {
        int from = at;
        if (isOneOf(from, Set.of("level"))) {
            from = afterSmallWords(from + 1);
        }
        int end = from;
        List<String> words = new ArrayList<>();
        while (isOneOf(end, grades) || isOneOf(end, names)) {
            String word = tokens.get(end).text();
            words.add(Character.toUpperCase(word.charAt(0)) + word.substring(1));
            end++;
        }
        if (words.isEmpty() || !isOneOf(end - 1, names)) {
            return Optional.empty();
        }
        at = end;
        return Optional.of(String.join(" ", words));
    }

    /** "weight on left", "lead with the LEFT foot" */
    Optional<Foot> footAfter(Set<String> words) {
        if (!isOneOf(at, words)) {
            return Optional.empty();
        }
        int foot = afterSmallWords(at + 1);
        if (isOneOf(foot, STARTING)) { // "weight starts on the right foot"
            foot = afterSmallWords(foot + 1);
        }
        Optional<Foot> side = isOneOf(foot, Set.of("left", "l", "lf"))
                ? Optional.of(Foot.LEFT)
                : isOneOf(foot, Set.of("right", "r", "rf")) ? Optional.of(Foot.RIGHT) : Optional.empty();
        boolean otherwise = isOneOf(foot + 1, Set.of("weight", "wt", "wall", "side", "hand")); // "start on left weight"
        if (side.isPresent() && !otherwise) {
            at = foot + 1;
            taken = tokens.get(foot).column();
            return side;
        }
        return Optional.empty();
    }

    static final Set<String> STARTING = Set.of("starts", "start", "starting", "begins", "begin", "beginning");

    private int afterSmallWords(int from) {
        int index = from;
        while (index < tokens.size()
                && (isOneOf(index, SMALL) || tokens.get(index).is(Kind.SEPARATOR))) {
            index++;
        }
        return index;
    }

    private OptionalInt take(int number, int end) {
        at = end;
        taken = tokens.get(number).column();
        return OptionalInt.of(Integer.parseInt(tokens.get(number).text()));
    }

    private boolean isNumber(int index) {
        return index < tokens.size()
                && tokens.get(index).is(Kind.NUMBER)
                && tokens.get(index).text().length() <= 4;
    }

    private boolean isOneOf(int index, Set<String> words) {
        return index >= 0
                && index < tokens.size()
                && tokens.get(index).is(Kind.WORD)
                && words.contains(tokens.get(index).text());
    }
}
