package cuelead.cli;

import cuelead.report.Refused;
import java.io.PrintStream;
import java.io.PrintWriter;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** What a user is told when a command does not come to its end, and the exit status that goes with it. */
final class Failures {
    static final int DONE = 0;
    static final int REFUSED = 1;
    static final int NOT_UNDERSTOOD = 2;
    /** As shells tell that a program ended by the signal of a closed pipe (128 + 13): it is no mistake. */
    static final int READER_GONE = 141;

    private Failures() {}

    /** How much is told about a mistake of the program. */
    enum Detail {
        SENTENCE,
        WHERE
    }

    /** Arguments that mean nothing: one sentence, what may have been meant, and where help is. */
    static int misunderstood(ParameterException failure, String[] arguments) {
        CommandLine command = failure.getCommandLine();
        PrintWriter err = command.getErr();
        if (failure instanceof UnmatchedArgumentException unmatched
                && !unmatched.getUnmatched().isEmpty()) {
            String wrong = unmatched.getUnmatched().get(0);
            err.println("\"" + wrong + "\" is not understood here.");
            Meant.by(wrong, command.getCommandSpec()).ifPresent(err::println);
        } else {
            err.println(sentence(failure.getMessage()));
        }
        err.println("\"" + command.getCommandSpec().qualifiedName() + " --help\" explains.");
        return NOT_UNDERSTOOD;
    }

    private static String sentence(String message) {
        return message.endsWith(".") ? message : message + ".";
    }

    /** A thing refused is told in its own sentence; a mistake of the program in one, with the place on request. */
    static int tell(Throwable failure, PrintStream err, Detail detail) {
        if (failure instanceof Refused) {
            err.println(failure.getMessage());
        } else if (failure instanceof InterruptedException) {
            err.println("Broken off.");
        } else if (failure instanceof OutOfMemoryError) {
            err.println("There is not enough memory for this: give Java more (java -Xmx1g -jar ...).");
        } else {
            err.println(
                    "Cuelead made a mistake of its own (" + failure + "); the same command with --debug says where.");
        }
        if (detail == Detail.WHERE) {
            failure.printStackTrace(err);
        }
        return REFUSED;
    }

    /** The exit status of a command whose output may have met a full disk or a closed pipe. */
    static int afterWriting(Surroundings surroundings, int exitCode) {
        if (surroundings.out().checkError() && exitCode == DONE) {
            if (surroundings.terminal().output() == Terminal.End.PIPE) {
                return READER_GONE;
            }
            surroundings
                    .err()
                    .println("Not all of the output could be written: its disk is full or its reader is gone.");
            return REFUSED;
        }
        return exitCode;
    }
}
