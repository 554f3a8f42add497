package cuelead.cli;

import java.io.Console;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Which of the program's streams lead to a terminal.
 *
 * @param input  whether keys may be read
 * @param output whether a line may be drawn again
 * @param errors the same for standard error
 */
record Terminal(End input, End output, End errors) {
    static final Terminal NONE = new Terminal(End.OTHER, End.OTHER, End.OTHER);

    private static final Path PROCESS = Path.of("/proc/self");
    /** Fields of {@code /proc/self/stat} behind the program's name (proc(5)): process group, and the terminal's. */
    private static final int GROUP = 2;

    private static final int FOREGROUND_GROUP = 5;

    /** What is at the other end of a stream. */
    enum End {
        TERMINAL,
        /** Another program, which may stop reading. */
        PIPE,
        /** A file, nothing, or not known. */
        OTHER
    }

    /** Asks the system; where it does not tell each stream, the console that Java sees stands for all three. */
    static Terminal ofThisProcess() {
        End console = Optional.ofNullable(System.console()).map(Terminal::end).orElse(End.OTHER);
        if (!Files.isDirectory(PROCESS.resolve("fd"))) {
            return new Terminal(console, console, console);
        }
        End input = isInForeground() ? end(0) : End.OTHER;
        return new Terminal(input, end(1), end(2));
    }

    /** Before Java 22 there is no console unless it is a terminal; from then on the console itself says. */
    private static End end(Console console) {
        try {
            Object isTerminal = Console.class.getMethod("isTerminal").invoke(console);
            return Boolean.TRUE.equals(isTerminal) ? End.TERMINAL : End.OTHER;
        } catch (NoSuchMethodException beforeJava22) {
            return End.TERMINAL;
        } catch (ReflectiveOperationException unknown) {
            return End.OTHER;
        }
    }

    private static End end(int descriptor) {
        try {
            String leadsTo = Files.readSymbolicLink(PROCESS.resolve("fd").resolve(Integer.toString(descriptor)))
                    .toString();
            if (leadsTo.startsWith("pipe:")) {
                return End.PIPE;
            }
            return leadsTo.startsWith("/dev/pts/") || leadsTo.startsWith("/dev/tty") ? End.TERMINAL : End.OTHER;
        } catch (IOException closed) {
            return End.OTHER;
        }
    }

    /** A program in the background that reads the terminal is stopped by the system. */
    private static boolean isInForeground() {
        try {
            String stat = Files.readString(PROCESS.resolve("stat"));
            String[] fields = stat.substring(stat.lastIndexOf(')') + 2).split(" ", -1);
            return fields.length > FOREGROUND_GROUP && fields[GROUP].equals(fields[FOREGROUND_GROUP]);
        } catch (IOException unknown) {
            return false;
        }
    }
}
