package cuelead.sheet;

import cuelead.dance.Figure;
import cuelead.dance.FigureRow;
import cuelead.dance.FigureRun;
import cuelead.dance.Figures;
import cuelead.dance.Foot;
import cuelead.dance.Metre;
import cuelead.dance.Step;
import cuelead.dance.Turn;
import cuelead.dance.Weight;
import cuelead.report.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** Reads a file of own figures, a line a figure, and tells what is wrong with it at its lines. */
final class OwnFigureReader {
    private static final int LONGEST_LINE = 2000;
    private static final String EXAMPLE = "Write it like \"ramble = step R to side, step L behind R\".";
    private static final Pattern LENGTH = Pattern.compile("\\s*[(\\[]\\s*\\d+\\s*(counts?|cts?|beats?)?\\s*[)\\]]");

    private final Problems problems;
    private final List<OwnFigure> figures = new ArrayList<>();

    OwnFigureReader(String fileName) {
        problems = new Problems(fileName);
    }

    OwnFigures read(String text) {
        int number = 0;
        for (String line : text.split("\n", -1)) {
            number++;
            String plain = line.strip();
            int equals = plain.indexOf('=');
            boolean whole = equals > 0 && equals < plain.length() - 1 && plain.length() <= LONGEST_LINE;
            if (whole && !plain.startsWith("#")) {
                figure(
                        name(plain.substring(0, equals)),
                        plain.substring(equals + 1).strip(),
                        number);
            } else if (!plain.isEmpty() && !plain.startsWith("#")) {
                problems.error("own_figure", number, 1, "This line is no figure of your own.", EXAMPLE);
            }
        }
        return new OwnFigures(figures, problems.all());
    }

    /** Without the foot beside it and without its length: "R wibble", "wibble (4 counts)". */
    private static String name(String written) {
        List<String> words = new ArrayList<>(
                List.of(LENGTH.matcher(written).replaceAll("").strip().split("\\s+")));
        if (words.size() > 1 && OwnFigure.isFoot(words.get(0).toLowerCase(Locale.ROOT))) {
            words.remove(0);
        }
        int last = words.size() - 1;
        if (last > 0 && OwnFigure.isFoot(words.get(last).replaceAll("[()]", "").toLowerCase(Locale.ROOT))) {
            words.remove(last);
        }
        return String.join(" ", words);
    }

    private void figure(String name, String written, int line) {
        if (figures.stream().anyMatch(other -> other.name().equalsIgnoreCase(name))) {
            problems.warning(
                    "own_figure",
                    line,
                    1,
                    "\"" + name + "\" stands here a second time; the first one counts.",
                    "Give it another name, or delete one of the two lines.");
            return;
        }
        String words = CountGroup.read(written)
                .map(group -> written.substring(group.end()).strip())
                .filter(rest -> !rest.isEmpty())
                .orElse(written);
        figures.add(new OwnFigure(name, words, row(name, words, line), line));
    }

    /** The figure as a row of the table; empty where its words are not understood, which is told. */
    private Optional<FigureRow> row(String name, String words, int line) {
        Problems found = new Problems("figures");
        List<Step> steps = steps(OwnFigure.footed(words), found);
        Optional<Problem> wrong = found.all().stream()
                .filter(problem -> problem.severity() != Problem.Severity.NOTE)
                .findFirst();
        if (steps.isEmpty() || wrong.isPresent()) {
            String why = wrong.map(problem -> " " + problem.sentence()).orElse("");
            problems.error(
                    "own_figure",
                    line,
                    1,
                    "\"" + name + "\" is not understood." + why,
                    wrong.map(Problem::tryThis)
                            .filter(advice -> !advice.isEmpty())
                            .orElse(EXAMPLE));
            return Optional.empty();
        }
        return Optional.of(row(name, steps));
    }

    private static List<Step> steps(String words, Problems found) {
        List<Phrase> phrases = LineFit.phrases(words);
        if (phrases.isEmpty()) {
            return List.of();
        }
        String counted = UsualCounts.of(phrases, 1) + " " + words;
        return CountGroup.read(counted)
                .map(group -> new LineReader(found, new Footing(Weight.UNKNOWN))
                        .read(new SheetLine(1, counted), group, group.counts()))
                .filter(LineReader.Result::understood)
                .map(LineReader.Result::steps)
                .orElse(List.of());
    }

    private static FigureRow row(String name, List<Step> steps) {
        List<Figure.Beat> pattern = steps.stream()
                .map(step -> new Figure.Beat(
                        step.count().offset(),
                        step.foot(),
                        step.action(),
                        step.direction(),
                        step.turn(),
                        step.transfer()))
                .toList();
        Foot lead =
                steps.stream().flatMap(step -> step.foot().stream()).findFirst().orElse(Foot.RIGHT);
        Turn net = steps.stream().map(Step::turn).reduce(Turn.NONE, Turn::plus);
        return FigureRow.own(
                new Figure(FigureRow.OWN + name, name, List.of(), lead, pattern, name, callWords(steps)), net);
    }

    /** Those of the figures that it is made of, else the word of each action. */
    private static List<String> callWords(List<Step> steps) {
        List<String> words = new ArrayList<>();
        steps.forEach(step -> words.add(
                step.turn().isNone() ? Figures.standard().callWord(step.action(), step.direction()) : "turn"));
        for (FigureRun run : OwnFigures.NONE.finder().find(steps, "", Metre.EIGHTS)) {
            for (int i = 0; i < run.steps(); i++) {
                words.set(run.firstStep() + i, run.danced().callWords().get(i));
            }
        }
        return words;
    }
}
