package cuelead.cli;

import cuelead.dsp.speech.MelBands;
import cuelead.output.DataFile;
import cuelead.plan.CallLevel;
import cuelead.plan.CallSettings;
import cuelead.practice.Wish;
import cuelead.rehearse.CallsPicture;
import cuelead.rehearse.ClickTimes;
import cuelead.rehearse.Replay;
import cuelead.rehearse.Review;
import cuelead.rehearse.Reviewer;
import cuelead.report.Refused;
import cuelead.time.Beats;
import cuelead.voice.MonoSound;
import cuelead.voice.Pronunciations;
import cuelead.voice.SynthVoice;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Tells how the calls of a take landed. */
@Command(
        name = "review",
        header = "Tell how your own calls landed.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        sortOptions = false,
        description = {
            "Listens to a recording of your calling that began with the music, and tells which calls were early, late,"
                    + " missed or other words than planned, and what to work on.",
            "Nothing leaves this computer, and nothing is kept but what you ask to be written."
        },
        footer = {
            "",
            "Examples:",
            "  cuelead review my-take.wav my-sheet.txt my-song.mp3",
            "  cuelead review my-take.wav my-sheet.txt my-song.mp3 --calibration clicks.wav --picture calls.png",
            "  cuelead review my-take.wav --plan plan.csv --music my-song.mp3 --csv > calls.csv",
            "  cuelead review my-take.wav my-sheet.txt my-song.mp3 --hear 12"
        })
final class ReviewCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "TAKE", description = "What the microphone gave, from where the music began.")
    private Path take;

    @Parameters(index = "1", arity = "0..1", paramLabel = "SHEET", description = "The step sheet that was called.")
    private Optional<Path> sheet;

    @Parameters(
            index = "2",
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
            description = "The music that the microphone may have caught, to be taken away. Usual is the song.")
    private Optional<Path> music;

    @Option(names = "--csv", description = "Comma-separated values with a header line instead of the report.")
    private boolean csv;

    @Option(
            names = "--picture",
            paramLabel = "FILE",
            description = "Also draw the calls against the beat, wall by wall, into this PNG file.")
    private Optional<Path> picture;

    @Option(
            names = "--hear",
            paramLabel = "NUMBER",
            description = "Play call number so many of the report: as planned, then as you said it.")
    private Optional<Integer> hear;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FILE",
            description = "Write what --hear plays into this WAV file instead.")
    private Optional<Path> output;

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

    ReviewCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws Exception {
        checkArguments();
        ReviewedDance dance = plan.isPresent()
                ? ReviewedDance.ofPlan(plan.get(), music)
                : ReviewedDance.of(surroundings, wish(), music);
        MonoSound heard = MonoFile.read(take, Optional.of(MelBands.RATE));
        TakeCheck.check(take, heard, dance.calls());
        TakeCheck.doubt(take, heard).ifPresent(surroundings.err()::println);
        double roundTrip = roundTripSeconds();
        SynthVoice voice = new SynthVoice(MelBands.RATE, Pronunciations.NONE);
        Optional<MonoSound> played = dance.music().isPresent()
                ? Optional.of(MonoFile.read(dance.music().get(), Optional.of(MelBands.RATE)))
                : Optional.empty();
        Review review = new Reviewer(voice).review(heard, played, dance.calls(), roundTrip);
        if (hear.isPresent()) {
            Replay replay = new Replay(heard, played, roundTrip, voice);
            new CallReplay(surroundings, review, replay).hear(hear.get(), output);
            return Failures.DONE;
        }
        if (csv) {
            surroundings.out().write(ReviewCsv.print(review).getBytes(StandardCharsets.UTF_8));
        } else {
            new ReviewListing(review, surroundings.out()).print();
        }
        if (picture.isPresent()) {
            DataFile.write(
                    picture.get(), ByteBuffer.wrap(CallsPicture.of(review).png()));
            surroundings.err().println("Wrote " + picture.get() + ".");
        }
        return Failures.DONE;
    }

    private void checkArguments() throws Refused {
        if (plan.isPresent() == sheet.isPresent()) {
            throw new CommandLine.ParameterException(
                    spec.commandLine(),
                    plan.isPresent()
                            ? "--plan stands for the sheet: name only one of them."
                            : "Name a step sheet (and a song), or a plan with --plan.");
        }
        if (output.isPresent() && hear.isEmpty()) {
            throw new CommandLine.ParameterException(
                    spec.commandLine(), "--output goes with --hear, which says what is written.");
        }
        if (output.isPresent()) {
            Targets.checkSoundFile(output.get());
        }
        if (picture.isPresent()) {
            Targets.checkPicture(picture.get());
        }
    }

    private Wish wish() {
        return Wish.of(sheet.orElseThrow())
                .song(song)
                .leadBeats(
                        lead.map(beats -> OptionalDouble.of(beats.toDecimal())).orElse(OptionalDouble.empty()))
                .calls(level, CallSettings.Fading.STEADY)
                .ownFigures(figures.file())
                .wish();
    }

    private double roundTripSeconds() throws Refused {
        if (calibration.isEmpty()) {
            surroundings
                    .err()
                    .println(
                            "Without --calibration the microphone counts as never late, so all calls seem a little late.");
            return 0;
        }
        MonoSound clicks = MonoFile.read(calibration.get(), Optional.empty());
        return ClickTimes.roundTripSeconds(clicks, calibration.get());
    }
}
