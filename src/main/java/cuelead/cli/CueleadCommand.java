package cuelead.cli;

import cuelead.report.Refused;
import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;

/** The program: chooses the command, or opens the window where none is given; without a display it plays the demo. */
@Command(
        name = "cuelead",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        synopsisSubcommandLabel = "COMMAND",
        description = {
            "Reads a step sheet, hears a song, and speaks each call ahead of its beat.",
            "Without a command it opens its window; where there is no display, it plays the demo."
        },
        footer = {
            "",
            "Begin with:",
            "  cuelead play cues/lamp-on-the-quay.txt        to the sheet's own song",
            "  cuelead render my-sheet.txt my-song.mp3 -o practice.wav",
            "  cuelead play --help                           what a command can do",
            "",
            "\"cuelead\" stands for: java -jar target/cuelead.jar",
            "",
            "Loud sound harms ears, and no program knows how loud your room is. Published limits:",
            "at work 85 dB(A) for 8 hours, half the time for each 3 dB more (NIOSH); from a",
            "personal player 80 dB for 40 hours a week, children 75 dB (WHO, ITU-T H.870)."
        })
final class CueleadCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Option(
            names = "--debug",
            scope = ScopeType.INHERIT,
            hidden = true,
            description = "When the program makes a mistake of its own, show where.")
    private boolean debug;

    private CueleadCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    /** Does what the arguments say; gives 0 when done, 1 when it cannot be done, 2 when it was not understood. */
    static int run(Surroundings surroundings, String... arguments) {
        CueleadCommand program = new CueleadCommand(surroundings);
        if (arguments.length == 0) {
            return program.withoutArguments();
        }
        CommandLine line = new CommandLine(program);
        new Subcommands(surroundings).neededBy(arguments).forEach(line::addSubcommand);
        line.setOut(writer(surroundings.out()));
        line.setErr(writer(surroundings.err()));
        line.setParameterExceptionHandler(Failures::misunderstood);
        line.setExecutionExceptionHandler((failure, command, parsed) -> program.failed(failure));
        try {
            return Failures.afterWriting(surroundings, line.execute(arguments));
        } catch (Error failure) {
            return program.failed(failure);
        }
    }

    private static PrintWriter writer(PrintStream stream) {
        return new PrintWriter(new OutputStreamWriter(stream, Charset.defaultCharset()), true);
    }

    private int failed(Throwable failure) {
        boolean showsWhere = debug
                || !surroundings.environment().getOrDefault("CUELEAD_DEBUG", "").isEmpty();
        return Failures.tell(
                failure, surroundings.err(), showsWhere ? Failures.Detail.WHERE : Failures.Detail.SENTENCE);
    }

    /** There is nothing to be understood, so what understands is not loaded: it takes as long as the window itself. */
    private int withoutArguments() {
        try {
            return Failures.afterWriting(surroundings, call());
        } catch (Exception | Error failure) {
            return failed(failure);
        }
    }

    @Override
    public Integer call() throws Refused, InterruptedException {
        return Display.isThere() ? WindowStart.open(surroundings) : new Demo(surroundings).run();
    }
}
