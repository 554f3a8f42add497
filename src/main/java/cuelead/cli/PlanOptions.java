package cuelead.cli;

import cuelead.plan.CallLevel;
import cuelead.plan.CallSettings;
import cuelead.practice.Practice;
import cuelead.practice.Wish;
import cuelead.rehearse.ClickTimes;
import cuelead.report.Refused;
import cuelead.steer.Told;
import cuelead.studio.MonoFile;
import cuelead.studio.ReviewedDance;
import cuelead.time.Beats;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What is to be called when: the same for all commands that compare calls with it. */
final class PlanOptions {
    @Spec(Spec.Target.MIXEE)
    private CommandLine.Model.CommandSpec command;

    @Parameters(index = "+", arity = "0..1", paramLabel = "SHEET", description = "The step sheet that is called.")
    private Optional<Path> sheet;

    @Parameters(
            index = "+",
            arity = "0..1",
            paramLabel = "SONG",
            description = "The song; without it, the one that the sheet names.")
    private Optional<Path> song;

    @Option(
            names = "--plan",
            paramLabel = "FILE",
            description = "Calls from this file in place of a sheet: the plan of \"cuelead plan --csv\", or any"
                    + " comma-separated values with the columns word and time (seconds).")
    private Optional<Path> plan;

    @Option(
            names = "--calibration",
            paramLabel = "FILE",
            description = "How late this microphone is: eight clicks, played at 1.0, 1.5 ... 4.5 seconds with the"
                    + " headphones held to it, as it recorded them.")
    private Optional<Path> calibration;

    @Option(
            names = "--music",
            paramLabel = "FILE",
            description = "With --plan: the music. What the microphone catches of it is taken away. Usual is the song.")
    private Optional<Path> music;

    @Option(
            names = "--lead",
            paramLabel = "BEATS",
            converter = Values.Lead.class,
            description = "How many beats ahead calls come, as for \"play\".")
    private Optional<Beats> lead;

    @Option(
            names = "--calls",
            paramLabel = "LEVEL",
            converter = Values.Level.class,
            defaultValue = "words",
            description = "How much is called, as for \"play\": words, figures, sections or changes. Usual is words.")
    private CallLevel level;

    @Mixin
    private FiguresOption figures;

    /** @throws CommandLine.ParameterException when both a sheet and a plan are named, or none of them */
    void check() {
        if (plan.isPresent() == sheet.isPresent()) {
            throw new CommandLine.ParameterException(
                    command.commandLine(),
                    plan.isPresent()
                            ? "--plan stands for the sheet: name only one of them."
                            : "Name a step sheet (and a song), or a plan with --plan.");
        }
    }

    /** What is to be called. */
    ReviewedDance dance(Surroundings surroundings) throws Refused {
        if (plan.isPresent()) {
            return ReviewedDance.ofPlan(plan.get(), music);
        }
        Wish wish = Wish.of(sheet.orElseThrow())
                .song(song)
                .leadBeats(
                        lead.map(beats -> OptionalDouble.of(beats.toDecimal())).orElse(OptionalDouble.empty()))
                .calls(level, CallSettings.Fading.STEADY)
                .ownFigures(figures.file())
                .wish();
        PracticeStart start = new PracticeStart(surroundings, wish);
        try (Practice practice = start.prepareQuietly()) {
            // how the voice says words is of no interest where nobody hears it
            new ProblemPrinter(surroundings.err())
                    .tellInShort(start.findings(practice).stream()
                            .filter(problem -> !PracticeStart.isOfVoice(problem))
                            .toList());
            return ReviewedDance.of(practice, wish.sheet(), music);
        }
    }

    /** The file that says what is called. */
    Path source() {
        return plan.or(() -> sheet).orElseThrow();
    }

    /** How late the microphone is by a recording of clicks; empty where none is named. */
    OptionalDouble calibratedSeconds() throws Refused {
        if (calibration.isEmpty()) {
            return OptionalDouble.empty();
        }
        Path clicks = calibration.get();
        return OptionalDouble.of(ClickTimes.roundTripSeconds(MonoFile.read(clicks, Optional.empty()), clicks));
    }

    /** The same choice as it is written behind a command. */
    String asWritten() {
        StringBuilder words = new StringBuilder();
        sheet.ifPresent(file -> words.append(' ').append(quoted(file)));
        song.ifPresent(file -> words.append(' ').append(quoted(file)));
        plan.ifPresent(file -> words.append(" --plan ").append(quoted(file)));
        music.ifPresent(file -> words.append(" --music ").append(quoted(file)));
        lead.ifPresent(beats -> words.append(" --lead ").append(Told.decimal(beats.toDecimal())));
        if (level != CallLevel.WORDS) {
            words.append(" --calls ").append(level.word());
        }
        figures.file().ifPresent(file -> words.append(" --figures ").append(quoted(file)));
        return words.toString();
    }

    /** As shells want it. */
    static String quoted(Path file) {
        return file.toString().contains(" ") ? '"' + file.toString() + '"' : file.toString();
    }
}
