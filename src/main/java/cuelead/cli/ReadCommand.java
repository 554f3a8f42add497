package cuelead.cli;

import cuelead.dance.Dance;
import cuelead.dance.DanceCheck;
import cuelead.document.DocumentText;
import cuelead.listing.Paper;
import cuelead.listing.SheetForm;
import cuelead.output.DataFile;
import cuelead.report.Problem;
import cuelead.report.Refused;
import cuelead.sheet.OwnFigures;
import cuelead.sheet.ReadSheet;
import cuelead.sheet.SheetFile;
import cuelead.sheet.SheetNotes;
import cuelead.sheet.SheetWriter;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Shows how a sheet was understood. */
@Command(
        name = "read",
        header = "Show a step sheet as it was understood, count by count.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        sortOptions = false,
        description = {
            "Shows for each count the foot, what it does, how far it turns, where the dancers face and which foot bears"
                    + " the weight afterwards, the call and the figure; then what is wrong or doubtful.",
            "The exit status is 0 when nothing is wrong (there may be warnings), else 1."
        },
        footer = {
            "",
            "Examples:",
            "  cuelead read my-sheet.pdf",
            "  cuelead read --clipboard",
            "  cuelead read --clipboard --text > my-sheet.txt    to keep it as a file",
            "  cuelead read my-sheet.pdf --write > my-sheet.txt",
            "  cuelead read my-sheet.txt --call-sheet calls.pdf",
            "  cuelead read my-sheet.txt --tsv > my-sheet.tsv"
        })
final class ReadCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Mixin
    private SheetSource source;

    @Mixin
    private FiguresOption figures;

    @Option(
            names = "--text",
            description = "The sheet's text instead, line by line as it was taken out of the document.")
    private boolean text;

    @Option(
            names = "--tsv",
            description = "Values parted by tabs instead: lines #key=value for the whole dance, a line of column"
                    + " names, a line an action.")
    private boolean tsv;

    @Option(names = "--write", description = "The dance written anew instead, as a step sheet in one clean style.")
    private boolean write;

    @Option(
            names = "--call-sheet",
            paramLabel = "FILE.pdf",
            description = "Also what is called, in large print, as a PDF file.")
    private Optional<Path> callSheet;

    @Option(
            names = "--step-sheet",
            paramLabel = "FILE.pdf",
            description = "Also the dance written anew, as a PDF file.")
    private Optional<Path> stepSheet;

    ReadCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws Exception {
        DocumentText document = source.open(surroundings.in());
        if (text) {
            surroundings.out().writeBytes((document.text() + "\n").getBytes(StandardCharsets.UTF_8));
            return Failures.DONE;
        }
        OwnFigures own = OwnFigures.read(figures.file());
        ReadSheet read = SheetFile.read(source.name(), document, own);
        List<Problem> problems = new ArrayList<>(own.problems());
        problems.addAll(read.problems());
        if (read.dance().isPresent()) {
            Dance dance = read.dance().get();
            problems.addAll(DanceCheck.check(dance, source.name()));
            print(dance, read.notes());
            save(callSheet, SheetForm.CALL_SHEET, dance, read.notes());
            save(stepSheet, SheetForm.STEP_SHEET, dance, read.notes());
        }
        new ProblemPrinter(surroundings.err(), Map.of(source.name(), document)).tellInFull(problems);
        if (write) {
            tellMarks(read.notes().unread().size());
        }
        boolean isWrong = problems.stream().anyMatch(problem -> problem.severity() == Problem.Severity.ERROR);
        return isWrong ? Failures.REFUSED : Failures.DONE;
    }

    /** What the written sheet holds that nobody should hand out unseen. */
    private void tellMarks(int places) {
        if (places > 0) {
            surroundings
                    .err()
                    .println((places == 1 ? "1 place was" : places + " places were")
                            + " not understood; the author's words stand there, marked \"[not understood: ...]\".");
        }
    }

    private void save(Optional<Path> file, SheetForm form, Dance dance, SheetNotes notes) throws Refused {
        if (file.isPresent()) {
            DataFile.write(file.get(), ByteBuffer.wrap(form.pdf(dance, notes, Paper.of(Locale.getDefault()))));
            surroundings.err().println("The " + form.word() + " is in " + file.get() + ".");
        }
    }

    private void print(Dance dance, SheetNotes notes) {
        if (write) {
            surroundings.out().writeBytes(SheetWriter.write(dance, notes).getBytes(StandardCharsets.UTF_8));
        } else if (tsv) {
            surroundings.out().writeBytes(ReadTsv.of(dance).getBytes(StandardCharsets.UTF_8));
        } else {
            new ReadListing(dance, surroundings.out()).print();
        }
    }
}
