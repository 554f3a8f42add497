package cuelead.cli;

import cuelead.plan.CallLevel;
import cuelead.plan.CallSettings;
import cuelead.practice.CallsGo;
import cuelead.practice.Wish;
import cuelead.time.Beats;
import cuelead.time.SampleRate;
import cuelead.time.Speed;
import cuelead.time.Tempo;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What to practise and how: the same for all commands that make a practice. */
final class PracticeOptions {
    @Spec(Spec.Target.MIXEE)
    private CommandLine.Model.CommandSpec command;

    @Parameters(
            index = "0",
            paramLabel = "SHEET",
            description = "The step sheet: a text file, PDF, Word document or saved web page.")
    private Path sheet;

    @Parameters(
            index = "1",
            arity = "0..1",
            paramLabel = "SONG",
            description = "The song: MP3, WAV, AIFF, OGG or FLAC, with its beat file beside it, or without."
                    + " Without it, the one that the sheet names.")
    private Optional<Path> song;

    @Option(
            names = "--lead",
            paramLabel = "BEATS",
            converter = Values.Lead.class,
            description = "How many beats ahead calls come: more than 0, at most 16."
                    + " Usual is 2; 1 for a dance that is known, 4 for beginners.")
    private Optional<Beats> lead;

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

    @Option(names = "--click", description = "A click on every beat, accented on the first of the bar.")
    private boolean click;

    @Option(
            names = "--words",
            paramLabel = "DIR",
            description = "A folder of your own recorded call-words: sound files named after the word.")
    private Optional<Path> words;

    @Mixin
    private FiguresOption figures;

    @Option(
            names = "--tempo",
            paramLabel = "BPM",
            converter = Values.BeatsPerMinute.class,
            description = "Practise without music, with clicks at so many beats a minute (20 to 400).")
    private Optional<Tempo> tempo;

    @Option(
            names = "--rate",
            paramLabel = "HZ",
            converter = Values.Rate.class,
            description = "Sample rate of the sound, 8000 to 192000. Usual is the song's own.")
    private Optional<SampleRate> rate;

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

    @Option(
            names = "--side",
            paramLabel = "SIDE",
            converter = Values.Side.class,
            defaultValue = "both",
            description = "Calls and click on this side only, left or right, and the music on the other, without"
                    + " dips. Usual is both.")
    private CallsGo callsGo;

    @Option(
            names = "--speed",
            paramLabel = "SPEED",
            converter = Values.SpeedRatio.class,
            defaultValue = "1",
            description = "How fast the song is played, at its own pitch: 0.4 to 1.25; 0.75 is three quarters of its"
                    + " tempo. Calls are spoken as fast as ever.")
    private Speed speed;

    CallsGo callsGo() {
        return callsGo;
    }

    Wish wish() {
        return wish(callsGo);
    }

    Wish wish(CallsGo go) {
        if (to.isPresent() && to.get() <= from) {
            throw new CommandLine.ParameterException(
                    command.commandLine(),
                    "--to " + Told.minutes(to.get()) + " is not after --from " + Told.minutes(from) + ".");
        }
        return new Wish(
                sheet,
                song,
                tempo,
                lead.map(beats -> OptionalDouble.of(beats.toDecimal())).orElse(OptionalDouble.empty()),
                level,
                fade ? CallSettings.Fading.WALL_BY_WALL : CallSettings.Fading.STEADY,
                click ? Wish.Click.EVERY_BEAT : Wish.Click.SILENT,
                words,
                figures.file(),
                rate,
                from,
                to.map(OptionalDouble::of).orElse(OptionalDouble.empty()),
                go,
                speed);
    }
}
