package cuelead.sheet;

import cuelead.dance.Claims;
import cuelead.dance.Dance;
import cuelead.dance.Header;
import cuelead.dance.Metre;
import cuelead.dance.Part;
import cuelead.dance.Weight;
import cuelead.report.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Reads a step sheet as the trade writes it: header, sections, counts with prose, tags, restarts, parts. Mistakes
 * become problems with line and column, and reading goes on at the next line, so that all are told at once.
 * Immutable and safe on any thread.
 */
public final class SheetReader {
    private static final int LONGEST_LINE = 2000;
    private static final int MOST_LINES = 500;

    private final OwnFigures ownFigures;
    private final Optional<Weight> assumed;
    private final Problems problems;
    private final HeaderReader header;
    private final OwnLines own;
    /** Lines above the dance, which may tell of its restarts, tags and parts. */
    private final List<SheetLine> headerNotes = new ArrayList<>();
    /** Lines that may state the lengths of parts: those above the dance, and the headings. */
    private final List<SheetLine> told = new ArrayList<>();

    private Optional<BodyReader> body = Optional.empty();

    private SheetReader(String fileName, Optional<Weight> assumed, OwnFigures ownFigures) {
        this.ownFigures = ownFigures;
        this.assumed = assumed;
        problems = new Problems(fileName);
        header = new HeaderReader(problems);
        own = new OwnLines(problems);
    }

    /**
     * Reads a sheet.
     *
     * @param fileName the file as the user named it, for the problems
     * @param text     the whole sheet
     */
    public static ReadSheet read(String fileName, String text) {
        return read(fileName, text, OwnFigures.NONE);
    }

    /**
     * Reads a sheet that may name figures of its reader's own.
     *
     * @param fileName the file as the user named it, for the problems
     * @param text     the whole sheet
     * @param own      figures and local names beside those of the table
     */
    public static ReadSheet read(String fileName, String text, OwnFigures own) {
        if (isNoText(text)) {
            return noSheet(fileName, "This is not a text file, so no step sheet can be read from it.");
        }
        if (text.isBlank()) {
            return noSheet(fileName, "The file is empty.");
        }
        List<SheetLine> lines = SheetLine.of(text);
        if (lines.size() > MOST_LINES) {
            return noSheet(
                    fileName, "This text has " + lines.size() + " lines; a step sheet has at most " + MOST_LINES + ".");
        }
        SheetLayout.Laid laid = SheetLayout.of(
                NotUnderstood.masked(lines).stream().map(own::expanded).toList());
        Optional<Weight> assumed = new SheetReader(fileName, Optional.empty(), own).weightThatIsNotSaid(laid);
        SheetReader reader = new SheetReader(fileName, assumed, own);
        ReadSheet read = reader.readAll(fileName, lines, laid);
        return read.dance().isPresent() ? withWhatIsSaid(read, lines, reader.saidBelow(laid)) : read;
    }

    /** What an option says is no step of the dance, but it is not left out either; nor are credits and notes. */
    private static ReadSheet withWhatIsSaid(ReadSheet read, List<SheetLine> lines, NoteLines.Places places) {
        Dance dance = read.dance().orElseThrow();
        List<Problem> problems = read.problems();
        Dance full = EasyOptions.with(dance, lines);
        List<Problem> told = problems.stream()
                .filter(problem -> full.options().isEmpty()
                        || !problem.kind().equals(Asides.NOT_READ)
                        || OptionWords.of(lines.get(problem.line() - 1).text()).isEmpty())
                .toList();
        SheetNotes said = NoteLines.of(lines, dance.header().title(), problems, places);
        return new ReadSheet(Optional.of(full), told, said.with(read.notes().unread()));
    }

    /** Where the dance begins, and which lines below it belong to nothing in it. */
    private NoteLines.Places saidBelow(SheetLayout.Laid laid) {
        List<Integer> below = body.orElseThrow().saidBelow().stream()
                .map(line -> firstLine(laid.lines().get(line.number() - 1)))
                .toList();
        return new NoteLines.Places(firstLine(laid.lines().get(laid.header())), below);
    }

    private static int firstLine(LaidLine line) {
        return line.origin(0).line();
    }

    /** Where the sheet does not say where the weight is before count 1, its first step tells: it is read so far. */
    private Optional<Weight> weightThatIsNotSaid(SheetLayout.Laid laid) {
        List<SheetLine> written = numbered(expanded(laid));
        Weight told = Weight.UNKNOWN;
        for (int i = 0; i < written.size() && header.startWeight().isEmpty() && told == Weight.UNKNOWN; i++) {
            read(written, i, laid.header());
            told = body.map(BodyReader::firstWeight).orElse(Weight.UNKNOWN);
        }
        return Optional.of(told).filter(weight -> weight != Weight.UNKNOWN);
    }

    private List<LaidLine> expanded(SheetLayout.Laid laid) {
        return laid.lines().stream().map(ownFigures::expanded).toList();
    }

    private ReadSheet readAll(String fileName, List<SheetLine> lines, SheetLayout.Laid laid) {
        BrokenFigures broken = new BrokenFigures(ownFigures);
        lines.forEach(line -> broken.look(line.text(), line.number()));
        laid.lines().forEach(line -> broken.look(line.text(), line.origin(0).line()));
        List<LaidLine> expanded = expanded(laid);
        Origins origins = new Origins(expanded);
        List<SheetLine> written = numbered(expanded);
        for (int i = 0; i < written.size(); i++) {
            read(written, i, laid.header());
        }
        body.ifPresent(read -> headerNotes.forEach(line -> read.note(line)));
        body.ifPresent(BodyReader::finish);
        if (body.isEmpty() || !body.get().isDance() || body.get().parts().isEmpty()) {
            return noSheet(fileName, "This is no step sheet: no line was found that has counts and steps behind them.");
        }
        Dance dance = dance(body.get());
        ClaimedExtras.check(headerNotes, written, dance, problems);
        return new ReadSheet(
                Optional.of(origins.of(dance, header)),
                broken.instead(problems.all(origins), fileName),
                SheetNotes.NONE.with(UnreadPlaces.of(dance, problems.unread(), new AuthorsWords(lines, expanded))));
    }

    /** Numbered from 1 as they are read; the origins know where they stand in the sheet. */
    private static List<SheetLine> numbered(List<LaidLine> laid) {
        List<SheetLine> lines = new ArrayList<>();
        for (LaidLine line : laid) {
            lines.add(line.numbered(lines.size() + 1));
        }
        return lines;
    }

    private boolean isShort(SheetLine line) {
        if (line.text().length() <= LONGEST_LINE) {
            return true;
        }
        problems.error(
                "long_line",
                line.number(),
                LONGEST_LINE,
                "This line is longer than " + LONGEST_LINE + " characters.",
                "Break it into count lines.");
        return false;
    }

    /** Reads the line at this index; the first of them are the header's. */
    private void read(List<SheetLine> lines, int at, int headerLines) {
        SheetLine line = lines.get(at);
        if (NotUnderstood.isWord(line.text().strip())) {
            Asides.leftOut(problems, line);
        }
        if (!isShort(line) || own.read(line)) {
            return;
        }
        if (body.isEmpty() && at >= headerLines) {
            body = Optional.of(newBody());
        }
        if (body.isEmpty() || LineKind.of(line) == LineKind.SECTION) {
            told.add(line);
        }
        if (body.isPresent()) {
            body.get().read(line, lines.stream().skip(at + 1L).findFirst());
        } else {
            if (!SequenceReader.isNote(line)) {
                header.read(line);
            }
            headerNotes.add(line);
        }
    }

    private BodyReader newBody() {
        return new BodyReader(
                problems,
                ownFigures.finder(),
                header.startWeight().map(Weight::on).or(() -> assumed),
                header.saysWaltz());
    }

    private Dance dance(BodyReader read) {
        Metre metre = read.metre();
        Weight start = header.startWeight().map(Weight::on).orElseGet(read::firstWeight);
        Header head = header.header(metre, start, own);
        List<Part> parts = read.parts();
        Claims claims = new Claims(
                read.marks(),
                read.doubts(),
                header.countsAt().line(),
                header.wallsAt().line(),
                header.weightAt().line(),
                read.ending().claims(),
                read.wallClaims(),
                PartLengths.in(told));
        return new Dance(
                head,
                parts,
                read.sequence(),
                read.tags(),
                read.restarts(),
                read.ending().ending(parts.get(parts.size() - 1).sections()),
                claims);
    }

    private static ReadSheet noSheet(String fileName, String sentence) {
        Problems one = new Problems(fileName);
        one.error(
                "not_a_sheet",
                0,
                0,
                sentence,
                "A step sheet has lines such as \"1-2 Step R to side, step L beside R\".");
        return new ReadSheet(Optional.empty(), one.all(), SheetNotes.NONE);
    }

    /** Characters that no text has: zero bytes, or many control or undecodable characters. */
    private static boolean isNoText(String text) {
        long odd = text.chars()
                .filter(c -> c == 0xfffd || (Character.isISOControl(c) && !Character.isWhitespace(c)))
                .count();
        return text.indexOf('\0') >= 0 || odd * 50 > text.length();
    }
}
