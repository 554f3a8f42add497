package cuelead.sheet;

import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/** What a line of the sheet is, told from how it begins. */
enum LineKind {
    TAG,
    RESTART,
    SEQUENCE,
    ENDING,
    REPEAT,
    NOTE,
    SECTION,
    COUNTS,
    OTHER;

    private static final Set<String> REPEATS = Set.of("repeat", "enjoy", "begin", "again", "start");
    /** "Start with a vine to the right": the first steps. */
    private static final Set<String> OPENERS = Set.of("with", "by", "on", "off", "out", "from");

    /** "Finish with a rocking chair (4)": the last steps of every wall. */
    private static final Pattern LENGTH =
            Pattern.compile("\\(\\d{1,2}(?: counts?)?[,)]|\\(\\d{1,2}-\\d{1,2}\\)|\\b\\d{1,2} counts\\b");

    private static final Set<String> NOTES = Set.of(
            "note",
            "notes",
            "option",
            "options",
            "styling",
            "style",
            "easy",
            "easier",
            "alternative",
            "clock",
            "tip",
            "tips",
            "hint",
            "hints",
            "ps");

    static LineKind of(SheetLine line) {
        return line.kind();
    }

    static LineKind byItsWords(SheetLine line) {
        List<String> words = firstWords(line);
        String first = words.isEmpty() ? "" : words.get(0);
        String second = words.size() > 1 ? words.get(1) : "";
        String word = first.equals("then") ? second : first;
        if (word.equals("tag") || word.equals("bridge") || word.equals("tags")) {
            return TAG;
        }
        if (addsToWall(line)) {
            return first.startsWith("restart") && AddedSteps.fillBar(line) ? RESTART : TAG;
        }
        if (isAgain(line) || DanceAgain.isTold(line)) {
            return REPEAT;
        }
        if (SequenceReader.isSequence(line)) {
            return SEQUENCE;
        }
        if (SectionHead.read(line.text()).isPresent()) {
            return SECTION;
        }
        if (CountGroup.read(line.text()).isPresent()) {
            return COUNTS;
        }
        if (saysRestart(line)) {
            return RESTART;
        }
        boolean lasts = OPENERS.contains(second) && LENGTH.matcher(line.text()).find();
        if (!lasts && EndingWords.isTold(line, word, second)) {
            return ENDING;
        }
        boolean opens = OPENERS.contains(second) && DanceLine.mayBeDanced(line);
        if (REPEATS.contains(word) && !opens && RepeatCall.read(line.text(), 0).isEmpty()) {
            return REPEAT;
        }
        return NOTES.contains(word) || isBracketed(line) || isOption(line) ? NOTE : OTHER;
    }

    /** "Volta: easy option - walk R, L, R", "For the full turn an easier alternative is to walk": no step of the dance. */
    private static boolean isOption(SheetLine line) {
        List<Token> words = line.tokens().stream()
                .filter(token -> token.is(Token.Kind.WORD))
                .limit(LONGEST_AGAIN)
                .toList();
        return words.stream().anyMatch(token -> isOneOf(token, EASY))
                && words.stream().anyMatch(token -> isOneOf(token, OPTION));
    }

    private static final Set<String> EASY =
            Set.of("easy", "easier", "simple", "simpler", "optional", "alternatively", "instead", "beginners");
    private static final Set<String> OPTION = Set.of(
            "option",
            "options",
            "alternative",
            "version",
            "variation",
            "optional",
            "alternatively",
            "instead",
            "may",
            "can");

    /**
     * "Restart on wall 3 ...", "*** Restart", "On wall 3 dance up to count 16, then restart", "Wall 4: stop after section
     * 2 and begin again".
     */
    private static boolean saysRestart(SheetLine line) {
        List<Token> tokens = line.tokens();
        boolean word = tokens.stream()
                .anyMatch(token -> token.is(Token.Kind.WORD) && token.text().startsWith("restart"));
        return word
                || (WallNote.namesWall(tokens)
                        && (beginsAnew(tokens) || LeftOut.in(tokens).isPresent()));
    }

    /** "start over", "begin again", "go back to the top", "start the dance from the beginning". */
    private static boolean beginsAnew(List<Token> tokens) {
        boolean leaves = tokens.stream().anyMatch(token -> isOneOf(token, LEAVES));
        for (int i = 0; i + 1 < tokens.size(); i++) {
            int behind = i + 1;
            while (behind + 1 < tokens.size() && isOneOf(tokens.get(behind), Set.of("the", "dance", "back", "to"))) {
                behind++;
            }
            if (isOneOf(tokens.get(i), BEGINS) && isOneOf(tokens.get(behind), ANEW)) {
                return leaves;
            }
        }
        return false;
    }

    private static final Set<String> LEAVES =
            Set.of("after", "dance", "stop", "only", "do", "omit", "leave", "skip", "cut", "at", "up", "through");
    private static final Set<String> BEGINS = Set.of("start", "begin", "go", "return", "back", "starting", "beginning");
    private static final Set<String> ANEW = Set.of("again", "over", "anew", "from", "top", "beginning", "start");

    private static boolean isOneOf(Token token, Set<String> words) {
        return token.is(Token.Kind.WORD) && words.contains(token.text());
    }

    /** "After wall 6 add: ...", "At the end of wall 2 do these extra 4 counts: ..." */
    private static boolean addsToWall(SheetLine line) {
        boolean behind = namesWallFirst(line) && has(line, Set.of("after", "end", "following", "finishing"));
        boolean adds = has(line, ADDS) || ANNOUNCES.matcher(line.text()).find();
        return behind && (adds || fillsMusic(line));
    }

    /** "After the third time through there is some spare music: just sway R, L, R, L (4 counts)". */
    private static boolean fillsMusic(SheetLine line) {
        List<String> first = firstWords(line);
        boolean ends = !first.isEmpty() && EndingWords.isTold(line, first.get(0), "");
        return !ends
                && LENGTH.matcher(line.text()).find()
                && line.isDanced()
                && !has(line, BREAKS_OFF)
                && OneLineTag.read(line).isPresent();
    }

    private static final Set<String> BREAKS_OFF = Set.of(
            "restart",
            "restarts",
            "restarting",
            "first",
            "only",
            "until",
            "till",
            "up",
            "stop",
            "last",
            "final",
            "leave",
            "skip",
            "omit");

    /** "Dance the following 4 counts", "do these 4 beats" */
    private static final Pattern ANNOUNCES = Pattern.compile(
            "\\b(?:do|dance|dancing) (?:(?:the|these) (?:following|next)|these|this)(?: \\w+)? (?:counts?|beats?|steps)\\b",
            Pattern.CASE_INSENSITIVE);

    /** Whether the line is about a wall: so many words stand before it at most. */
    private static boolean namesWallFirst(SheetLine line) {
        List<Token> words = line.tokens().stream()
                .filter(token -> !token.is(Token.Kind.MARK))
                .limit(WORDS_BEFORE_WALL)
                .toList();
        return WallNote.namesWall(words);
    }

    private static final int WORDS_BEFORE_WALL = 9;
    private static final Set<String> ADDS = Set.of("add", "adds", "adding", "extra", "additional", "insert");

    private static boolean has(SheetLine line, Set<String> words) {
        return line.tokens().stream().anyMatch(token -> token.is(Token.Kind.WORD) && words.contains(token.text()));
    }

    /** "& round again", "[48] Repeat dance in new direction", "That's it. Start over on the new wall": no step. */
    private static boolean isAgain(SheetLine line) {
        List<Token> words = line.tokens().stream()
                .filter(token -> token.is(Token.Kind.WORD))
                .limit(LONGEST_AGAIN + 1)
                .toList();
        boolean repeat = !words.isEmpty() && words.get(0).text().equals("repeat") && has(line, Set.of("dance"));
        boolean again = words.stream().anyMatch(token -> token.text().equals("again"));
        boolean told = repeat || (again && DanceLine.movesNothing(line.text()));
        return told
                && words.size() <= LONGEST_AGAIN
                && !has(line, PARTS)
                && !line.namesWall()
                && !RepeatCall.isCounted(line.text());
    }

    private static final int LONGEST_AGAIN = 9;
    private static final Set<String> PARTS =
            Set.of("count", "counts", "beat", "beats", "steps", "section", "sections", "last", "tag", "restart");

    private static boolean isBracketed(SheetLine line) {
        char first = line.text().charAt(line.firstColumn() - 1);
        if (first == '(') {
            String text = line.text().strip();
            int close = text.indexOf(')');
            return close < 0 || close >= text.length() - 2;
        }
        return first == '*' || first == '#';
    }

    private static List<String> firstWords(SheetLine line) {
        return line.tokens().stream()
                .filter(token -> !token.is(Token.Kind.MARK) && !token.is(Token.Kind.OPEN))
                .limit(2)
                .map(Token::text)
                .toList();
    }
}
