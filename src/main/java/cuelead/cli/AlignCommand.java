package cuelead.cli;

import cuelead.practice.Alignment;
import cuelead.practice.Delays;
import cuelead.report.Refused;
import cuelead.steer.DelayWords;
import cuelead.steer.DeviceChoice;
import cuelead.steer.LostDevices;
import cuelead.steer.SpeakerPair;
import cuelead.time.SampleRate;
import java.util.List;
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
    private static final List<String> WHAT_TO_DO = List.of(
            "Turn both devices down before you put the earphone in: clicks can be loud.",
            "right, left: the click in your ear 5 ms later, earlier (up, down: 50 ms;",
            "point, comma: 1 ms) until both are heard as one. Enter ends.");

    private static final String WITHOUT_KEYS =
            "Aligning needs a terminal whose keys can be read; there, start it again, or try --ear-delay"
                    + " with play.";

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
        KeyedLine screen = new KeyedLine(surroundings, WITHOUT_KEYS);
        Delays found;
        try (SpeakerPair speakers = choice.open(surroundings.devices(), RATE)) {
            WHAT_TO_DO.forEach(surroundings.err()::println);
            found = align(screen, speakers, delays);
        }
        surroundings.out().println("Both were heard together with " + DelayWords.asking(found));
        return Failures.DONE;
    }

    private static Delays align(KeyedLine screen, SpeakerPair speakers, Delays atFirst)
            throws Refused, InterruptedException {
        Alignment alignment = new Alignment(speakers.main(), speakers.ear().orElseThrow(), atFirst, RATE);
        screen.show(new Aligning(speakers, alignment, atFirst), new LostDevices(speakers));
        return alignment.delays();
    }

    /** Delays that are tried one after the other. */
    private static final class Aligning implements KeyedLine.Shown {
        private final SpeakerPair speakers;
        private final Alignment alignment;
        private final Delays atFirst;
        private boolean isDone;

        Aligning(SpeakerPair speakers, Alignment alignment, Delays atFirst) {
            this.speakers = speakers;
            this.alignment = alignment;
            this.atFirst = atFirst;
        }

        @Override
        public boolean isOver() {
            return isDone || speakers.main().hasEnded();
        }

        @Override
        public void obey(String stroke) {
            isDone = AlignKeys.ends(stroke);
            alignment.delays(AlignKeys.after(stroke, alignment.delays(), atFirst));
        }

        @Override
        public void tick() {
            alignment.tick();
        }

        @Override
        public String line() {
            return DelayWords.asking(alignment.delays());
        }
    }
}
