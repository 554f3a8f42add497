package cuelead.cli;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;

/** Where a user's own figures stand: the same for all commands that read a sheet. */
final class FiguresOption {
    @Option(
            names = "--figures",
            paramLabel = "FILE",
            description = "A text file of your own figures and local names, one a line:"
                    + " harbour wave = step R to side, step L behind R, step R to side, scuff L.")
    private Optional<Path> file;

    Optional<Path> file() {
        return file;
    }
}
