package cuelead.sheet;

import cuelead.dance.FigureFinder;
import cuelead.dance.FigureRow;
import cuelead.dance.Figures;
import cuelead.report.Problem;
import cuelead.report.Refused;
import cuelead.report.UserText;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;

/**
 * Figures and local names of an instructor's own, one a line: {@code ramble = step R to side, step L behind R, step R
 * to side, scuff L} or {@code wizard step = dorothy}. The words stand for the foot that they begin with; for the other
 * foot they are danced as the mirror image. {@code #} begins a comment. A sheet may name them, and wherever their steps
 * are danced, they are called by their name.
 */
public final class OwnFigures {
    private static final FigureFinder STANDARD = new FigureFinder(Figures.standard());

    /** No figures of one's own. */
    public static final OwnFigures NONE = new OwnFigures(List.of(), List.of());

    /** The longest name first, so that none is taken for a part of another. */
    private final List<OwnFigure> figures;

    private final List<Problem> problems;
    private final FigureFinder finder;

    OwnFigures(List<OwnFigure> figures, List<Problem> problems) {
        this.figures = figures.stream()
                .sorted(Comparator.comparingInt((OwnFigure own) -> own.name().length())
                        .reversed())
                .toList();
        this.problems = List.copyOf(problems);
        List<FigureRow> rows =
                figures.stream().flatMap(own -> own.row().stream()).toList();
        finder = rows.isEmpty() ? STANDARD : new FigureFinder(Figures.standard().with(rows));
    }

    /**
     * Reads a file of own figures.
     *
     * @throws Refused when it cannot be read
     */
    public static OwnFigures read(Path file) throws Refused {
        return of(file.toString(), UserText.read(file, "The figures of your own"));
    }

    /**
     * Reads the file of own figures that a user named, if any.
     *
     * @throws Refused when it cannot be read
     */
    public static OwnFigures read(Optional<Path> file) throws Refused {
        return file.isPresent() ? read(file.get()) : NONE;
    }

    /** Reads their text; lines that are none become problems. */
    public static OwnFigures of(String fileName, String text) {
        return new OwnFigureReader(fileName).read(text);
    }

    /** Mistakes in the file. */
    public List<Problem> problems() {
        return problems;
    }

    /** Finds them in steps before the figures of the table. */
    FigureFinder finder() {
        return finder;
    }

    /** The line with the words of own figures in the place of their names. */
    SheetLine expanded(SheetLine line) {
        return expanded(line, SheetLine::text, (named, edit) -> named.with(edit.from(), edit.to(), edit.words()));
    }

    /** The same for a line whose counts the layout has found. */
    LaidLine expanded(LaidLine line) {
        return expanded(line, LaidLine::text, (named, edit) -> named.with(edit.from(), edit.to(), edit.words()));
    }

    private <L> L expanded(L line, Function<L, String> text, BiFunction<L, OwnFigure.Edit, L> edited) {
        L expanded = line;
        for (OwnFigure own : named(text.apply(line))) {
            L before = expanded;
            String words = text.apply(before);
            expanded = own.in(words, stepsFrom(words))
                    .map(edit -> edited.apply(before, edit))
                    .orElse(before);
        }
        return expanded;
    }

    /** Those that the steps of a line name; a line without counts has none. */
    private List<OwnFigure> named(String text) {
        return figures.isEmpty() || CountGroup.read(text).isEmpty()
                ? List.of()
                : figures.stream()
                        .filter(own -> own.in(text, stepsFrom(text)).isPresent())
                        .toList();
    }

    private static int stepsFrom(String text) {
        return CountGroup.read(text).map(CountGroup::end).orElse(text.length());
    }

    /** The names in a line of figures whose words are not understood. */
    List<String> notUnderstood(String text) {
        return named(text).stream()
                .filter(own -> own.row().isEmpty())
                .map(own -> "\"" + own.name() + "\"")
                .toList();
    }
}
