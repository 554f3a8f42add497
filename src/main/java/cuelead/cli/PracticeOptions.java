package cuelead.cli;

import cuelead.plan.CallLevel;
import cuelead.plan.CallSettings;
import cuelead.practice.CallsGo;
import cuelead.practice.Wish;
import cuelead.steer.Told;
import java.util.Optional;
import java.util.OptionalDouble;
import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** What to practise and how: the same for all commands that make a practice. */
final class PracticeOptions {
    @Spec(Spec.Target.MIXEE)
    private CommandLine.Model.CommandSpec command;

    @Mixin
    private DanceOptions dance;

    @Option(
            names = "--calls",
            paramLabel = "LEVEL",
            converter = Values.Level.class,
            defaultValue = "words",
            description = "How much is called: words, figures, sections, changes (walls, tags and restarts only)"
                    + " or none. Usual is words.")
    private CallLevel level;

    @Option(names = "--fade", description = "Call less from wall to wall, until only changes are called.")
    private boolean fade;

    @Option(
            names = "--from",
            paramLabel = "TIME",
            converter = Values.SongTime.class,
            defaultValue = "0",
            description = "Begin here in the song: seconds, or minutes and seconds (62.5 or 1:02.5).")
    private Double from;

    @Option(
            names = "--to",
            paramLabel = "TIME",
            converter = Values.SongTime.class,
            description = "End here in the song: seconds, or minutes and seconds.")
    private Optional<Double> to;

    /** Calls where the dance's options say. */
    Wish wish() {
        return wish(dance.callsGo());
    }

    /** Calls where both say. */
    Wish wish(SoundOptions sound) {
        return wish(dance.callsGo(sound));
    }

    private Wish wish(CallsGo go) {
        if (to.isPresent() && to.get() <= from) {
            throw new CommandLine.ParameterException(
                    command.commandLine(),
                    "--to " + Told.minutes(to.get()) + " is not after --from " + Told.minutes(from) + ".");
        }
        return dance.wish(
                go,
                level,
                fade ? CallSettings.Fading.WALL_BY_WALL : CallSettings.Fading.STEADY,
                from,
                to.map(OptionalDouble::of).orElse(OptionalDouble.empty()));
    }
}
