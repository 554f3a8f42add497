package cuelead.sheet;

import cuelead.sheet.Token.Kind;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A tag whose steps stand on the line of its head: "Tag: 4 counts at the end of wall 3: Hip bumps R, L, R, L".
 *
 * @param head what comes before the steps
 * @param line the whole line
 * @param from 0-based index of the first character of its steps, or of their counts
 */
record OneLineTag(SheetLine head, SheetLine line, int from) {

    /** Empty where the line is only a head. */
    static Optional<OneLineTag> read(SheetLine line) {
        List<Token> tokens = line.tokens();
        for (int i = 1; i < tokens.size(); i++) {
            int from = tokens.get(i).column() - 1;
            if (isParted(line.text(), from)
                    && !isWall(tokens, i)
                    && (isCounted(line, from)
                            || isDanced(line, from)
                            || repeat(line, from).isPresent())) {
                return Optional.of(at(line, from));
            }
        }
        return Optional.empty();
    }

    /** The 4 of "after walls 2, 4 and 6: ..." begins no steps. */
    private static boolean isWall(List<Token> tokens, int at) {
        int before = at;
        while (before > 0 && tokens.get(before).is(Kind.NUMBER) && isJoint(tokens.get(before - 1))) {
            before -= 2;
        }
        return before >= 0
                && before < at
                && (tokens.get(before).is(Kind.NUMBER) && before > 0 && isWalls(tokens.get(before - 1)));
    }

    private static boolean isJoint(Token token) {
        return token.text().equals(",") || token.is(Kind.AMPERSAND) || token.isWord("and");
    }

    private static boolean isWalls(Token token) {
        return token.isWord("walls") || token.isWord("wall");
    }

    /** Walls, counts and the facing may be told behind the steps too: they belong to the head. */
    private static OneLineTag at(SheetLine line, int from) {
        String text = line.text();
        int end = remarkFrom(text, from);
        Matcher told = TOLD.matcher(text).region(from, end);
        StringBuilder head = new StringBuilder(text.substring(0, from));
        StringBuilder steps = new StringBuilder(text.substring(0, end));
        while (told.find()) {
            head.append(' ').append(told.group());
            steps.replace(told.start(), told.end(), " ".repeat(told.end() - told.start()));
        }
        head.append(' ').append(text.substring(end));
        return new OneLineTag(
                new SheetLine(line.number(), head.toString()), new SheetLine(line.number(), steps.toString()), from);
    }

    private static final String WALLS = "walls?\\s+\\d{1,2}(?:(?:\\s*(?:,|&|\\band\\b))+\\s*\\d{1,2})*";
    /** In brackets: "end of wall 3", "4 counts"; without them: "at the end of wall 3", "after the 3rd wall". */
    private static final Pattern TOLD = Pattern.compile(
            "\\([^()]*\\bwalls?\\b[^()]*\\)|(?<=\\()\\s*\\d{1,2}\\s*(?:counts?|cts?\\.?|beats?)\\b"
                    + "|,?\\s(?:at )?(?:the )?(?:end of|after|following|on)\\s+(?:the )?(?:"
                    + WALLS
                    + "|\\d(?:st|nd|rd|th)\\s+wall)\\b|,?\\s+(?:and\\s+|then\\s+)*restart\\b(?:\\s+the dance)?",
            Pattern.CASE_INSENSITIVE);

    /** Where a sentence begins at the end that moves nothing: "You are at 12:00." */
    private static int remarkFrom(String text, int from) {
        int stop = text.indexOf(". ", from);
        while (stop > 0 && !DanceLine.movesNothing(text.substring(stop))) {
            stop = text.indexOf(". ", stop + 1);
        }
        return stop < 0 ? text.length() : stop;
    }

    /** "Tag: S6 counts 1-4, x2", "Tag: repeat the last 4 counts" */
    private static Optional<RepeatCall> repeat(SheetLine line, int from) {
        return RepeatCall.read(line.text(), from).or(() -> RepeatCall.named(line.text(), from));
    }

    private static boolean isParted(String text, int from) {
        int before = from - 1;
        while (before > 0 && Scanner.isSpace(text.charAt(before))) {
            before--;
        }
        return before > 0 && ":-\u2013\u2014.;,".indexOf(text.charAt(before)) >= 0;
    }

    /** Counts of a tag begin at 1: "4 hip bumps" tells how many. */
    private static boolean isCounted(SheetLine line, int from) {
        String rest = line.text().substring(from);
        return CountGroup.read(rest)
                .filter(group -> group.counts().get(0).number() <= 1 && hasVerb(rest, group.end()))
                .isPresent();
    }

    private static boolean isDanced(SheetLine line, int from) {
        List<Token> rest = Scanner.tokens(line.text(), from);
        List<Token> open =
                rest.stream().takeWhile(token -> !token.is(Kind.OPEN)).toList();
        boolean tells = WallNote.namesWall(open)
                || open.stream().anyMatch(token -> token.is(Kind.WORD) && WALL_WORDS.contains(token.text()));
        return !tells && !tellsLengthFirst(rest) && hasVerb(line.text(), from);
    }

    /** "4 counts: rock ...", "facing 12:00, ...": still the head. */
    private static boolean tellsLengthFirst(List<Token> rest) {
        return Vocabulary.STANDARD.terms(rest).stream()
                .takeWhile(term -> !term.is(Term.Kind.VERB) && !term.is(Term.Kind.FIGURE_WORD))
                .anyMatch(term -> term.is(Term.Kind.COUNT) || term.is(Term.Kind.CLOCK));
    }

    private static final List<String> WALL_WORDS = List.of("wall", "walls", "sequence");

    private static boolean hasVerb(String text, int from) {
        return Vocabulary.STANDARD.terms(Scanner.tokens(text, from)).stream()
                .anyMatch(term -> term.is(Term.Kind.VERB) || term.is(Term.Kind.FIGURE_WORD));
    }

    /** The steps alone, a line for each of their counts; none of them counted, a line of as many as are danced. */
    List<SheetLine> counted(int statedCounts) {
        String steps = line.text().substring(from);
        List<CountPlaces.Counted> counted = repeat(line, from).isPresent() ? List.of() : CountPlaces.of(steps, 0);
        if (counted.size() < 2) {
            return List.of(whole(statedCounts));
        }
        return counted.stream().map(each -> part(steps, each)).toList();
    }

    private SheetLine part(String steps, CountPlaces.Counted each) {
        String numbers = each.group().written(steps) + " ";
        int before = Math.max(0, from + each.from() - numbers.length());
        return new SheetLine(line.number(), " ".repeat(before) + numbers + steps.substring(each.from(), each.to()));
    }

    /** The steps alone at their own columns, with counts before them: the stated ones, else as many as are danced. */
    private SheetLine whole(int statedCounts) {
        String steps = line.text().substring(from);
        Optional<RepeatCall> repeat = repeat(line, from);
        String told = repeat.map(call -> "1-" + Math.max(2, call.length(Math.max(8, statedCounts))))
                .orElseGet(() -> numbers(statedCounts));
        String numbers = isCounted(line, from) ? "" : told + " ";
        return new SheetLine(line.number(), " ".repeat(Math.max(0, from - numbers.length())) + numbers + steps);
    }

    private String numbers(int statedCounts) {
        List<Term> terms = Vocabulary.STANDARD.danced(Scanner.tokens(line.text(), from));
        List<Phrase> phrases = new ProseParser(Vocabulary.STANDARD, Problems.unheard(), line.number(), terms).phrases();
        boolean fits = UsualCounts.length(phrases) == statedCounts;
        boolean told = statedCounts > 0 && !fits;
        return told ? (statedCounts == 1 ? "1" : "1-" + statedCounts) : UsualCounts.of(phrases, 1);
    }
}
