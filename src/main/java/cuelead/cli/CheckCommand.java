package cuelead.cli;

import cuelead.dance.DanceCheck;
import cuelead.practice.Practice;
import cuelead.practice.Wish;
import cuelead.report.Problem;
import cuelead.report.Refused;
import cuelead.sheet.OwnFigures;
import cuelead.sheet.ReadSheet;
import cuelead.sheet.SheetFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Tells what is wrong or doubtful. */
@Command(
        name = "check",
        header = "Say what is wrong or doubtful.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        sortOptions = false,
        description = {
            "Reads a step sheet, its song and its beats. Each finding has file, line and column, the line itself,"
                    + " and what to try.",
            "The exit status is 0 when nothing is wrong (there may be warnings), else 1."
        },
        footer = {
            "",
            "Examples:",
            "  cuelead check my-sheet.txt",
            "  cuelead check my-sheet.txt my-song.mp3 --words my-words"
        })
final class CheckCommand implements Callable<Integer> {
    private final Surroundings surroundings;
    private final List<Problem> problems = new ArrayList<>();
    private final List<String> refusals = new ArrayList<>();
    private final List<String> fit = new ArrayList<>();

    @Parameters(
            index = "0",
            paramLabel = "SHEET",
            description = "The step sheet: a text file, PDF, Word document or saved web page.")
    private Path sheet;

    @Parameters(
            index = "1",
            arity = "0..1",
            paramLabel = "SONG",
            description = "The song. Without it, the one that the sheet names.")
    private Optional<Path> song;

    @Option(names = "--words", paramLabel = "DIR", description = "A folder of your own recorded call-words.")
    private Optional<Path> words;

    @Mixin
    private FiguresOption figures;

    @Option(
            names = "--tsv",
            description = "Values parted by tabs instead: a line of column names, then a line a finding.")
    private boolean tsv;

    CheckCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws Exception {
        OwnFigures own = OwnFigures.read(figures.file());
        problems.addAll(own.problems());
        ReadSheet read = SheetFile.read(sheet, own);
        problems.addAll(read.problems());
        read.dance().ifPresent(dance -> problems.addAll(DanceCheck.check(dance, sheet.toString())));
        if (read.dance().isPresent()) {
            checkPractice();
        }
        tell();
        return tellSum();
    }

    private void checkPractice() throws InterruptedException {
        Wish wish = Wishes.usual(sheet, song, words, figures.file());
        PracticeStart start = new PracticeStart(surroundings, wish);
        try (Practice practice = start.prepareQuietly()) {
            practice.await(practice.toFrame());
            start.findings(practice).stream()
                    .filter(problem -> words.isPresent() || !PracticeStart.isOfVoice(problem))
                    .forEach(problems::add);
            practice.song().ifPresent(song -> fit.addAll(FitListing.lines(practice)));
        } catch (Refused refused) {
            boolean isListed = problems.stream().map(Problem::message).anyMatch(refused.getMessage()::startsWith);
            if (!isListed) {
                refusals.add(refused.getMessage());
            }
        }
    }

    private void tell() {
        if (tsv) {
            byte[] text = FindingsTsv.of(problems, refusals).getBytes(StandardCharsets.UTF_8);
            surroundings.out().writeBytes(text);
            return;
        }
        new ProblemPrinter(surroundings.out()).tellInFull(problems);
        refusals.forEach(surroundings.out()::println);
        fit.forEach(surroundings.out()::println);
    }

    private int tellSum() {
        long errors = count(Problem.Severity.ERROR) + refusals.size();
        long warnings = count(Problem.Severity.WARNING);
        if (errors + warnings == 0) {
            surroundings.err().println("Nothing is wrong with " + sheet + ".");
        } else {
            surroundings.err().println(sum(errors, warnings));
        }
        return errors == 0 ? Failures.DONE : Failures.REFUSED;
    }

    private static String sum(long errors, long warnings) {
        String warned = Told.number(warnings, "warning");
        if (errors == 0) {
            return warned + ".";
        }
        return Told.number(errors, "error") + (warnings == 0 ? "." : ", " + warned + ".");
    }

    private long count(Problem.Severity severity) {
        return problems.stream()
                .distinct()
                .filter(problem -> problem.severity() == severity)
                .count();
    }
}
