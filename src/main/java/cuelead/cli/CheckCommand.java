package cuelead.cli;

import cuelead.report.Problem;
import cuelead.report.Refused;
import cuelead.sheet.OwnFigures;
import cuelead.steer.Told;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Tells what is wrong or doubtful. */
@Command(
        name = "check",
        header = "Say what is wrong or doubtful.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        sortOptions = false,
        description = {
            "Reads a step sheet, its song and its beats, or several sheets one after the other. Each finding has file,"
                    + " line and column, the line itself, and what to try.",
            "The exit status is 0 when nothing is wrong (there may be warnings), else 1."
        },
        footer = {
            "",
            "Examples:",
            "  cuelead check my-sheet.txt",
            "  cuelead check my-sheet.txt another.pdf",
            "  cuelead check my-sheet.txt my-song.mp3 --words my-words"
        })
final class CheckCommand implements Callable<Integer> {
    /** Endings of names that no song has. */
    private static final Set<String> DOCUMENTS =
            Set.of("txt", "text", "md", "pdf", "doc", "docx", "html", "htm", "mht", "mhtml");

    private final Surroundings surroundings;

    @Spec
    private CommandLine.Model.CommandSpec command;

    @Parameters(
            index = "0",
            paramLabel = "SHEET",
            description = "The step sheet: a text file, PDF, Word document or saved web page.")
    private Path sheet;

    @Parameters(
            index = "1..*",
            arity = "0..*",
            paramLabel = "SONG",
            description = "The song. Without it, the one that the sheet names. Or more sheets.")
    private List<Path> more = List.of();

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
        List<Path> sheets = new ArrayList<>(List.of(sheet));
        more.stream().filter(CheckCommand::isDocument).forEach(sheets::add);
        Optional<Path> song = song();
        OwnFigures own = OwnFigures.read(figures.file());
        List<CheckedSheet> checked = new ArrayList<>();
        boolean allOpened = true;
        for (Path each : sheets) {
            CheckedSheet found = new CheckedSheet(surroundings, Wishes.usual(each, song, words, figures.file()), own);
            allOpened &= check(found, sheets.size() > 1);
            checked.add(found);
        }
        if (tsv) {
            tellTsv(checked);
        }
        boolean isRight = allOpened && checked.stream().allMatch(each -> each.errors() == 0);
        return isRight ? Failures.DONE : Failures.REFUSED;
    }

    /** Whether the sheet could be opened; where it is one of several, the others are checked all the same. */
    private boolean check(CheckedSheet sheet, boolean oneOfSeveral) throws Refused, InterruptedException {
        try {
            sheet.check(words.isPresent());
        } catch (Refused refused) {
            if (!oneOfSeveral) {
                throw refused;
            }
            surroundings.err().println(refused.getMessage());
            return false;
        }
        if (!tsv) {
            tell(sheet, oneOfSeveral);
        }
        return true;
    }

    private Optional<Path> song() {
        List<Path> songs = more.stream().filter(file -> !isDocument(file)).toList();
        if (songs.size() > 1) {
            throw new CommandLine.ParameterException(
                    command.commandLine(), "Name one song: \"" + songs.get(0) + "\" or \"" + songs.get(1) + "\".");
        }
        return songs.stream().findFirst();
    }

    private static boolean isDocument(Path file) {
        String name = file.toString().toLowerCase(Locale.ROOT);
        return DOCUMENTS.contains(name.substring(name.lastIndexOf('.') + 1));
    }

    private void tellTsv(List<CheckedSheet> checked) {
        List<Problem> problems =
                checked.stream().flatMap(each -> each.problems().stream()).toList();
        List<String> refusals =
                checked.stream().flatMap(each -> each.refusals().stream()).toList();
        surroundings.out().writeBytes(FindingsTsv.of(problems, refusals).getBytes(StandardCharsets.UTF_8));
        checked.forEach(each -> tellSum(each, checked.size() > 1));
    }

    private void tell(CheckedSheet checked, boolean oneOfSeveral) {
        new ProblemPrinter(surroundings.out()).tellInFull(checked.problems());
        checked.refusals().forEach(surroundings.out()::println);
        checked.fit().forEach(surroundings.out()::println);
        tellSum(checked, oneOfSeveral);
    }

    private void tellSum(CheckedSheet checked, boolean oneOfSeveral) {
        boolean isRight = checked.errors() + checked.warnings() == 0;
        String name = oneOfSeveral && !isRight ? checked.sheet() + ": " : "";
        surroundings.err().println(name + (isRight ? "Nothing is wrong with " + checked.sheet() + "." : sum(checked)));
    }

    private static String sum(CheckedSheet checked) {
        String warned = Told.number(checked.warnings(), "warning");
        if (checked.errors() == 0) {
            return warned + ".";
        }
        return Told.number(checked.errors(), "error") + (checked.warnings() == 0 ? "." : ", " + warned + ".");
    }
}
