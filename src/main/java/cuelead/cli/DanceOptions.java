package cuelead.cli;

import cuelead.plan.CallLevel;
import cuelead.plan.CallSettings;
import cuelead.practice.CallsGo;
import cuelead.practice.DipWish;
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

/** Which dance and song, and how they sound: the same for all commands that call a dance. */
final class DanceOptions {
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

    @Option(names = "--click", description = "A click on every beat, accented on the first of the bar.")
    private boolean click;

    @Mixin
    private VoiceOptions voice;

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
            names = "--side",
            paramLabel = "SIDE",
            converter = Values.Side.class,
            defaultValue = "both",
            description = "Calls and click on this side only, left or right, and the music on the other, without"
                    + " dips. Usual is both.")
    private CallsGo callsGo;

    @Option(
            names = "--dip",
            paramLabel = "DIP",
            converter = Values.Dip.class,
            defaultValue = "all",
            description =
                    "How the music goes down under the calls: all of it, or only the band that covers speech, 1 to"
                            + " 4 kHz (band), so that its bass goes on; or by how many dB, 0 to 24; or both (band,14). Usual is"
                            + " all of it, by 10.")
    private DipWish dip;

    @Option(
            names = "--speed",
            paramLabel = "SPEED",
            converter = Values.SpeedRatio.class,
            defaultValue = "1",
            description = "How fast the song is played, at its own pitch: 0.4 to 1.25; 0.75 is three quarters of its"
                    + " tempo. Calls are spoken as fast as ever.")
    private Speed speed;

    @Option(
            names = "--easy",
            description = "Call the easier steps where the sheet offers some (\"cuelead read\" shows them).")
    private boolean easy;

    /**
     * Where calls go.
     *
     * @throws CommandLine.ParameterException when a side and a device of their own are asked for
     */
    CallsGo callsGo(SoundOptions sound) {
        if (!sound.hasEar()) {
            return callsGo;
        }
        if (callsGo != CallsGo.WITH_THE_MUSIC) {
            throw new CommandLine.ParameterException(
                    command.commandLine(), "--side and --ear cannot go together: choose one of them.");
        }
        return CallsGo.APART;
    }

    CallsGo callsGo() {
        return callsGo;
    }

    /** The whole dance with every word. */
    Wish wish(CallsGo go) {
        return wish(go, CallLevel.WORDS, CallSettings.Fading.STEADY, 0, OptionalDouble.empty());
    }

    Wish wish(CallsGo go, CallLevel level, CallSettings.Fading fading, double fromSeconds, OptionalDouble toSeconds) {
        return Wish.of(sheet)
                .song(song)
                .tempo(tempo)
                .leadBeats(
                        lead.map(beats -> OptionalDouble.of(beats.toDecimal())).orElse(OptionalDouble.empty()))
                .calls(level, fading)
                .click(click ? Wish.Click.EVERY_BEAT : Wish.Click.SILENT)
                .voice(voice.wish())
                .ownFigures(figures.file())
                .rate(rate)
                .between(fromSeconds, toSeconds)
                .callsGo(go)
                .speed(speed)
                .way(easy ? Wish.Way.EASIER : Wish.Way.AS_WRITTEN)
                .dip(dip)
                .wish();
    }
}
