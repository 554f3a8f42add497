package cuelead.cli;

import cuelead.practice.Alignment;
import cuelead.practice.Delays;
import cuelead.report.Refused;
import cuelead.time.SampleRate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Spec;

/** Finds the delays with which two devices are heard together. */
@Command(
        name = "align",
        header = "Bring your earphone and the loudspeaker together.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        sortOptions = false,
        description = {
            "Plays the same click on both devices, once a second. Stand where you will teach, one ear with the"
                    + " earphone and one free, and press keys until you hear one click instead of two; then Cuelead"
                    + " tells you the options for \"play\".",
            "Keys: right and left move the click in your ear 5 milliseconds later or earlier, up and down 50,"
                    + " point and comma 1. Enter ends."
        },
        footer = {
            "",
            "Examples:",
            "  cuelead devices                              what there is",
            "  cuelead align --ear earphone",
            "  cuelead align --device hall --ear earphone --ear-delay 180"
        })
final class AlignCommand implements Callable<Integer> {
    private static final SampleRate RATE = new SampleRate(44_100);
    private static final long POLL_MILLIS = 16;
    private static final List<String> WHAT_TO_DO = List.of(
            "Turn both devices down before you put the earphone in: clicks can be loud.",
            "right, left: the click in your ear 5 ms later, earlier (up, down: 50 ms;",
            "point, comma: 1 ms) until both are heard as one. Enter ends.");

    private final Surroundings surroundings;

    @Spec
    private CommandLine.Model.CommandSpec command;

    @Mixin
    private SoundOptions sound;

    AlignCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws Exception {
        if (!sound.hasEar()) {
            throw new CommandLine.ParameterException(
                    command.commandLine(), "Name the second device with --ear (\"cuelead devices\" lists them).");
        }
        Delays delays = sound.delays();
        DeviceChoice choice = sound.choose(surroundings.devices());
        checkTerminal();
        Delays found;
        try (SpeakerPair speakers = choice.open(surroundings.devices(), RATE)) {
            WHAT_TO_DO.forEach(surroundings.err()::println);
            found = align(speakers, delays);
        }
        surroundings.out().println("Both were heard together with " + SoundOptions.asking(found));
        return Failures.DONE;
    }

    private void checkTerminal() throws Refused {
        Terminal terminal = surroundings.terminal();
        if (terminal.input() != Terminal.End.TERMINAL || terminal.output() != Terminal.End.TERMINAL) {
            throw noKeys();
        }
    }

    private static Refused noKeys() {
        return new Refused("Aligning needs a terminal whose keys can be read; there, start it again, or try --ear-delay"
                + " with play.");
    }

    private Delays align(SpeakerPair speakers, Delays delays) throws Refused, InterruptedException {
        int columns = TerminalWidth.ofOutput(surroundings.environment()) - 1;
        Screen screen = new Screen(surroundings.out(), columns);
        Alignment alignment = new Alignment(speakers.main(), speakers.ear().orElseThrow(), delays, RATE);
        LostDevices lost = new LostDevices(speakers);
        try (RawKeys keys = RawKeys.open().orElseThrow(AlignCommand::noKeys)) {
            Optional<String> stroke = Optional.empty();
            while (!stroke.map(AlignKeys::ends).orElse(false)
                    && !speakers.main().hasEnded()) {
                alignment.tick();
                screen.show(SoundOptions.asking(alignment.delays()));
                for (String news : lost.news()) {
                    screen.clear();
                    surroundings.err().print(news + "\r\n"); // a raw terminal does not go back by itself
                }
                stroke = keys.next(POLL_MILLIS);
                stroke.map(key -> AlignKeys.after(key, alignment.delays(), delays))
                        .ifPresent(alignment::delays);
            }
        } finally {
            screen.clear();
        }
        return alignment.delays();
    }
}
