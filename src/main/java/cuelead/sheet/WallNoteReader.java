package cuelead.sheet;

import cuelead.dance.Facing;
import cuelead.sheet.Token.Kind;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/** Takes the words of a {@link WallNote} out of a line. */
final class WallNoteReader {
    private static final List<String> ORDINALS =
            List.of("first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth");
    private static final Set<String> WALL =
            Set.of("wall", "walls", "rotation", "rotations", "repetition", "repetitions", "round", "rounds", "w", "ws");
    /** "The fifth time through", "the third time around". */
    private static final Set<String> TIME = Set.of("time", "pass");

    private static final Set<String> AROUND = Set.of("through", "thru", "round", "around", "over", "you", "we");
    /** "Begin from section 1": where the dance goes on, none of the places where it stops. */
    private static final Set<String> FROM = Set.of("from", "with", "beginning", "start");

    private static final Set<String> COUNT = Set.of("count", "counts", "beat", "beats", "ct", "cts");
    private static final Set<String> SECTION = Set.of("section", "sections", "s", "sec", "set", "sets");

    private final List<Token> tokens;
    /** Columns of "third" and "6th". */
    private final Set<Integer> ordinals = new HashSet<>();

    private final List<Integer> walls = new ArrayList<>();
    /** Where the numbers of the walls stand among the tokens. */
    private final Set<Integer> listed = new HashSet<>();

    private final List<Integer> groups = new ArrayList<>();
    private final List<Integer> counts = new ArrayList<>();
    private final List<Integer> places = new ArrayList<>();
    private final List<Integer> sections = new ArrayList<>();

    private static final Pattern SHORT_WALL = Pattern.compile("w[1-9]\\d?");

    /** A quick look, since it is asked of every line many times: false where no wall can be named. */
    static boolean mayNameWall(List<Token> tokens) {
        for (Token token : tokens) {
            if (token.is(Kind.WORD) && mayBeWall(token.text())) {
                return true;
            }
        }
        return false;
    }

    private static boolean mayBeWall(String word) {
        boolean numbered = word.charAt(0) == 'w' && SHORT_WALL.matcher(word).matches();
        return numbered || WALL.contains(word) || TIME.contains(word);
    }

    WallNoteReader(List<Token> tokens) {
        tokens.stream()
                .filter(token -> token.is(Kind.ORDINAL) || ORDINALS.contains(token.text()))
                .forEach(token -> ordinals.add(token.column()));
        this.tokens = SpelledNumbers.asNumbers(IntStream.range(0, tokens.size())
                .filter(i -> !tokens.get(i).is(Kind.MARK) || isRange(tokens, i))
                .mapToObj(tokens::get)
                .toList());
    }

    /** "1-3", and not the hyphen of "2-count". */
    private static boolean isRange(List<Token> tokens, int at) {
        return tokens.get(at).isHyphen()
                && at + 1 < tokens.size()
                && tokens.get(at + 1).is(Kind.NUMBER);
    }

    boolean namesWall() {
        for (int i = 0; i < tokens.size(); i++) {
            boolean ordinal = number(i - 1).isPresent()
                    && ordinals.contains(tokens.get(i - 1).column());
            boolean numbered = isWord(i, WALL) && (number(i + 1).isPresent() || ordinal);
            if (numbered || isTime(i) || shortWall(i).isPresent()) {
                return true;
            }
        }
        return false;
    }

    WallNote read() {
        for (int i = 0; i < tokens.size(); i++) {
            if (isWord(i, WALL) || isTime(i) || shortWall(i).isPresent()) {
                walls(i);
            } else if (isWord(i, COUNT)) {
                count(i);
            } else if ((isWord(i, SECTION) || isUnit(i)) && !goesOnThere(i)) {
                (isCountedUp(i) ? number(i - 1) : last(i + 1)).ifPresent(sections::add);
            } else if (isWord(i, Set.of("after")) && isPlainCount(i + 1)) {
                number(i + 1).ifPresent(count -> {
                    counts.add(count);
                    places.add(count);
                });
            } else if (isLetteredRange(i)) {
                sections.add(tokens.get(i).text().charAt(0) - 'a' + 1);
                counts.add(last(i + 1).orElseThrow());
                places.add(last(i + 1).orElseThrow());
            } else if (tokens.get(i).is(Kind.WORD) && tokens.get(i).text().matches("(?:s|sec|sect|set)[1-9]\\d?")) {
                sections.add(Integer.parseInt(tokens.get(i).text().replaceAll("\\D", "")));
            }
        }
        List<SaidFacing> said = SaidFacing.in(tokens);
        OptionalInt own = isWord(2, COUNT) || isWord(2, Set.of("c")) ? OptionalInt.empty() : number(1);
        return new WallNote(
                walls,
                groups,
                counts,
                places,
                sections,
                facings(said, SaidFacing.When.HERE),
                facings(said, SaidFacing.When.AT_WALL_START).stream().findFirst(),
                said.stream().allMatch(facing -> isBesideWall(facing.index())),
                own);
    }

    /** "wall 3 (6:00)", "walls 3 (facing 6:00) and 5 (12:00)" */
    private boolean isBesideWall(int at) {
        int open = isWord(at - 1, Set.of("facing")) ? at - 2 : at - 1;
        boolean bracket = open > 0 && tokens.get(open).is(Kind.OPEN);
        return bracket && listed.contains(open - 1);
    }

    /** "Dance 5 sections", "the first three sections" */
    private boolean isCountedUp(int at) {
        return isWord(at, Set.of("section", "sections", "set", "sets"))
                && number(at - 1).isPresent()
                && last(at + 1).isEmpty();
    }

    /** "Dance A, B and C 1-2": counts of the third section. */
    private boolean isLetteredRange(int at) {
        boolean letter = tokens.get(at).is(Kind.WORD) && tokens.get(at).text().matches("[a-h]");
        return letter
                && number(at + 1).orElse(0) == 1
                && isDash(at + 2)
                && number(at + 3).isPresent();
    }

    private boolean isTime(int at) {
        return isWord(at, TIME) && isWord(at + 1, AROUND) && number(at - 1).isPresent();
    }

    private boolean goesOnThere(int at) {
        return isWord(at - 1, FROM) && !walls.isEmpty() && last(at + 1).orElse(0) == 1;
    }

    private static List<Facing> facings(List<SaidFacing> said, SaidFacing.When when) {
        return said.stream()
                .filter(facing -> facing.when() == when)
                .map(SaidFacing::facing)
                .toList();
    }

    private void count(int unit) {
        OptionalInt count = beside(unit);
        count.ifPresent(counts::add);
        count.ifPresent(told -> {
            if (isPlaced(unit)) {
                places.add(told);
            }
        });
    }

    /** "After count 8", "up to 16 counts", "the first 8 counts of wall 2", "count 8": no length; "do the following 4 counts" tells one. */
    private boolean isPlaced(int unit) {
        boolean behind = last(unit + 1).isPresent() && !isWord(unit + 2, TIMES);
        int before = behind ? unit - 1 : unit - 2;
        while (isWord(before, Set.of("the", "first", "of", "dancing", "all"))) {
            before--;
        }
        boolean announced = isWord(before, Set.of("following")) && isWord(before - 1, Set.of("the", "these"));
        return (isWord(before, PLACING) && !announced) || (behind && isWord(unit, Set.of("count", "beat", "ct")));
    }

    private static final Set<String> TIMES = Set.of("times", "x");
    private static final Set<String> PLACING =
            Set.of("after", "following", "until", "till", "to", "through", "thru", "at", "end");

    /** "after 16" where no unit stands behind the number. */
    private boolean isPlainCount(int at) {
        return number(at).isPresent() && !isWord(at + 1, WALL) && !isWord(at + 1, COUNT) && !isUnit(at);
    }

    /** "After Six 4", "to Eight 3": sections that are called by what they are counted in. */
    private boolean isUnit(int at) {
        boolean unit = number(at).orElse(0) == SIX || number(at).orElse(0) == EIGHT;
        boolean placed = isWord(at - 1, PLACING) || isWord(at - 1, Set.of("of"));
        return unit && placed && number(at + 1).isPresent() && !isWord(at + 2, COUNT);
    }

    private static final int SIX = 6;
    private static final int EIGHT = 8;

    /** "wall 3", "walls 2, 4 and 5", "the 3rd wall", "the second and fourth walls", "W2 and W5" */
    private void walls(int word) {
        int before = walls.size();
        shortWall(word).ifPresent(walls::add);
        int at = word + 1;
        boolean more = true;
        while (more) {
            int told = behindBracket(at);
            boolean goesOn =
                    isJoint(told) && (at > word + 1 || tokens.get(told).text().equals(":"));
            int next = goesOn ? told + 1 : at;
            OptionalInt number = number(next);
            boolean counts = isWord(next + 1, COUNT) || (next > word + 1 && isCountRange(next));
            more = number.isPresent() && !counts && (next == word + 1 || next > at);
            if (more) {
                walls.add(number.getAsInt());
                listed.add(next);
                at = next + 1;
            }
        }
        boolean ordinal = number(word - 1).isPresent()
                && ordinals.contains(tokens.get(word - 1).column());
        if (walls.size() == before && (before == 0 || ordinal)) {
            ahead(word);
        }
        if (walls.size() > before) {
            groups.add(walls.size() - before);
        }
    }

    /** The counts of "after walls 2 and 4: 1-4 Sway ..." */
    private boolean isCountRange(int at) {
        return isDash(at + 1) && number(at + 2).isPresent();
    }

    /** "walls 2 (6:00) and 5 (3:00)": what a bracket tells of one of them parts no list. */
    private int behindBracket(int at) {
        int end = at;
        if (at < tokens.size() && tokens.get(at).is(Kind.OPEN)) {
            while (end < tokens.size() && !tokens.get(end).is(Kind.CLOSE)) {
                end++;
            }
        }
        return end > at ? end + 1 : at;
    }

    /** "the second and fourth walls": numbers ahead of the word, joined. */
    private void ahead(int word) {
        int at = word - 1;
        int before = walls.size();
        while (number(at).isPresent()) {
            walls.add(before, number(at).getAsInt());
            at -= isJoint(at - 1) ? 2 : 1;
        }
    }

    /** "W3" */
    private OptionalInt shortWall(int at) {
        boolean wall = tokens.get(at).is(Kind.WORD)
                && SHORT_WALL.matcher(tokens.get(at).text()).matches();
        return wall ? OptionalInt.of(Integer.parseInt(tokens.get(at).text().substring(1))) : OptionalInt.empty();
    }

    private boolean isJoint(int at) {
        return at >= 0
                && at < tokens.size()
                && (tokens.get(at).is(Kind.SEPARATOR)
                        || tokens.get(at).is(Kind.AMPERSAND)
                        || tokens.get(at).isWord("and"));
    }

    /** "Sets 1 to 3" ends with the third. */
    private OptionalInt last(int at) {
        boolean range = number(at).isPresent()
                && (isWord(at + 1, Set.of("to", "through", "thru", "and")) || isDash(at + 1))
                && number(at + 2).isPresent()
                && number(at + 2).getAsInt() > number(at).getAsInt();
        return range ? number(at + 2) : number(at);
    }

    private boolean isDash(int at) {
        return at < tokens.size() && tokens.get(at).text().equals("-");
    }

    private OptionalInt beside(int word) {
        OptionalInt behind = isWord(word + 2, TIMES) ? OptionalInt.empty() : last(word + 1);
        return behind.isPresent() ? behind : number(word - 1);
    }

    private OptionalInt number(int at) {
        if (at < 0 || at >= tokens.size()) {
            return OptionalInt.empty();
        }
        Token token = tokens.get(at);
        if (token.is(Kind.NUMBER) && token.text().length() <= 3) {
            return OptionalInt.of(Integer.parseInt(token.text()));
        }
        int ordinal = token.is(Kind.WORD) ? ORDINALS.indexOf(token.text()) : -1;
        return ordinal < 0 ? OptionalInt.empty() : OptionalInt.of(ordinal + 1);
    }

    private boolean isWord(int at, Set<String> words) {
        return at >= 0
                && at < tokens.size()
                && tokens.get(at).is(Kind.WORD)
                && words.contains(tokens.get(at).text());
    }
}
