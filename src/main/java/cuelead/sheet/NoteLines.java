package cuelead.sheet;

import cuelead.report.Problem;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Keeps what a sheet says and nobody dances: credits above the dance, notes in it and below. What is told otherwise is left
 * out: facts of the header, easy options, restarts, tags and endings.
 */
final class NoteLines {
    /** What is left out before a note. */
    private static final Pattern HEAD = Pattern.compile("^\\W*notes?\\b\\s*[:.\u2013-]?\\s*", Pattern.CASE_INSENSITIVE);

    private static final Set<String> COLUMNS = Set.of(
            "count",
            "counts",
            "beat",
            "beats",
            "step",
            "steps",
            "description",
            "facing",
            "direction",
            "footwork",
            "actual",
            "calling",
            "suggestion",
            "bar",
            "bars");
    private static final Pattern BY = Pattern.compile("\\W*by\\b", Pattern.CASE_INSENSITIVE);

    /** So many words that are none of the trade make a line one that is said. */
    private static final int FEWEST_STRANGE_WORDS = 2;

    /** Letters alone, in lower case. */
    private final String title;

    private final int bodyLine;
    /** Lines that nobody dances, as the reader found. */
    private final Set<Integer> said;

    private final List<String> credits = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();
    private boolean titled;
    private int lastNote;

    private NoteLines(String title, int bodyLine, Set<Integer> said) {
        this.title = letters(title);
        this.bodyLine = bodyLine;
        titled = this.title.isEmpty();
        this.said = said;
    }

    /**
     * Places in a sheet, as 1-based numbers of lines.
     *
     * @param body  the line with which the dance begins
     * @param below lines below it that belong to nothing in it
     */
    record Places(int body, List<Integer> below) {}

    /**
     * Those of a sheet.
     *
     * @param lines    the whole sheet
     * @param title    the dance's name, as it was read
     * @param problems what was told of the lines, also of those that nobody dances
     */
    static SheetNotes of(List<SheetLine> lines, String title, List<Problem> problems, Places places) {
        Set<Integer> said = new HashSet<>(places.below());
        problems.stream()
                .filter(problem -> problem.kind().equals(Asides.NOT_READ))
                .forEach(problem -> said.add(problem.line()));
        NoteLines notes = new NoteLines(title, places.body(), said);
        lines.stream().filter(line -> !line.isBlank()).forEach(notes::take);
        return new SheetNotes(notes.credits, notes.notes, List.of());
    }

    private void take(SheetLine line) {
        String letters = letters(line.text());
        boolean isTitle = letters.equals(title) || (!titled && letters.contains(title));
        titled |= isTitle;
        int facts = HeaderTitle.factsFrom(line.text());
        if (isTitle && facts >= 0) {
            credits.addAll(CreditsWithin.in(line.text().substring(facts)));
        }
        if (isTitle || letters.isEmpty() || isOfAnotherKind(line)) {
            return;
        }
        if (line.number() >= bodyLine) {
            note(line);
        } else if (isCredit(line)) {
            credits.add(line.text().strip());
        } else if (LineKind.of(line) == LineKind.NOTE || LineKind.of(line) == LineKind.OTHER) {
            credits.addAll(CreditsWithin.in(line.text()));
        }
    }

    private static String letters(String text) {
        return text.chars()
                .filter(Character::isLetterOrDigit)
                .map(Character::toLowerCase)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }

    private static boolean isOfAnotherKind(SheetLine line) {
        boolean heads = line.tokens().stream()
                .filter(token -> token.is(Token.Kind.WORD))
                .allMatch(token -> COLUMNS.contains(token.text()));
        return heads
                || NotUnderstood.begins(line.text())
                || OwnLines.isOwn(line)
                || PageCrumbs.isCrumb(line)
                || !OptionWords.of(line.text()).isEmpty()
                || SequenceReader.isNote(line)
                || PhrasedWords.usual(List.of(line)).stream().anyMatch(SequenceReader::isSequence);
    }

    private static boolean isCredit(SheetLine line) {
        LineKind kind = LineKind.of(line);
        boolean plain = (kind == LineKind.NOTE || kind == LineKind.OTHER) && !line.namesWall();
        boolean named = new HeaderTokens(line.tokens()).startsWith(HeaderFacts.CREDITS);
        boolean made = BY.matcher(line.text()).lookingAt();
        return plain && (named || (!HeaderFacts.isFact(line) && (made || isSaid(line))));
    }

    /** "If the kick is too much for the knees": not the names of figures alone. */
    private static boolean isSaid(SheetLine line) {
        long strange = Vocabulary.STANDARD.terms(line.tokens()).stream()
                .filter(term -> term.is(Term.Kind.UNKNOWN))
                .count();
        return strange >= FEWEST_STRANGE_WORDS || DanceLine.movesNothing(line.text());
    }

    private void note(SheetLine line) {
        boolean told =
                LineKind.of(line) == LineKind.NOTE && !Row.of(line, 0, false).isCounted();
        if (!told && !(said.contains(line.number()) && isSaid(line))) {
            return;
        }
        String words = HEAD.matcher(line.text()).replaceFirst("").strip();
        if (words.isEmpty()) {
            return;
        }
        char first = line.text().charAt(line.firstColumn() - 1);
        boolean goesOn = lastNote == line.number() - 1 && Character.isLowerCase(first) && !notes.isEmpty();
        notes.add(goesOn ? notes.remove(notes.size() - 1) + " " + words : words);
        lastNote = line.number();
    }

    /** A line that is read as this note again. */
    static String written(String note) {
        return LineKind.of(new SheetLine(1, note)) == LineKind.NOTE ? note : "Note: " + note;
    }
}
