package cuelead.cli;

import cuelead.document.DocumentFile;
import cuelead.document.DocumentText;
import cuelead.report.Refused;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Where a sheet comes from: a file, the clipboard, or standard input. */
final class SheetSource {
    private static final Path STANDARD_INPUT = Path.of("-");
    private static final int LARGEST_BYTES = 32 << 20;

    @Spec(Spec.Target.MIXEE)
    private CommandLine.Model.CommandSpec command;

    @Parameters(
            index = "0",
            arity = "0..1",
            paramLabel = "SHEET",
            description = "The step sheet: a text file, PDF, Word document or saved web page; - for standard input.")
    private Optional<Path> file;

    @Option(names = "--clipboard", description = "Read what was copied last in any program, instead of a file.")
    private boolean clipboard;

    /** As problems name it. */
    String name() {
        if (clipboard) {
            return "clipboard";
        }
        return isStandardInput() ? "standard input" : file.map(Path::toString).orElse("");
    }

    /**
     * Opens it.
     *
     * @throws Refused when it holds no text that can be read
     */
    DocumentText open(InputStream standardInput) throws Refused {
        if (clipboard == file.isPresent()) {
            throw new CommandLine.ParameterException(
                    command.commandLine(),
                    clipboard ? "Name a SHEET or --clipboard, not both." : "Name a SHEET, or --clipboard.");
        }
        if (clipboard) {
            return Clipping.ofSystem();
        }
        return isStandardInput()
                ? DocumentFile.read(name(), bytes(standardInput))
                : DocumentFile.read(file.orElseThrow());
    }

    private boolean isStandardInput() {
        return file.isPresent() && file.get().equals(STANDARD_INPUT);
    }

    private byte[] bytes(InputStream in) throws Refused {
        try {
            return in.readNBytes(LARGEST_BYTES);
        } catch (IOException broken) {
            throw new Refused("Standard input broke off; save the sheet as a file and name that.", broken);
        }
    }
}
