package cuelead.cli;

import cuelead.output.DataFile;
import cuelead.output.Targets;
import cuelead.output.WavFile;
import cuelead.output.WavFormat;
import cuelead.rehearse.CallsPicture;
import cuelead.rehearse.Replay;
import cuelead.rehearse.Review;
import cuelead.report.Refused;
import cuelead.sound.Speakers;
import cuelead.studio.ReplayPlay;
import cuelead.voice.MonoSound;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** How a review is told, and what else is made of it. */
final class ReportOptions {
    @Spec(Spec.Target.MIXEE)
    private CommandLine.Model.CommandSpec command;

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

    /** Refuses what can be told to fail before any work is done. */
    void check() throws Refused {
        if (output.isPresent() && hear.isEmpty()) {
            throw new CommandLine.ParameterException(
                    command.commandLine(), "--output goes with --hear, which says what is written.");
        }
        if (output.isPresent()) {
            Targets.checkSoundFile(output.get());
        }
        if (picture.isPresent()) {
            Targets.checkPicture(picture.get());
        }
    }

    boolean isCsv() {
        return csv;
    }

    boolean isHeard() {
        return hear.isPresent();
    }

    /** The table or the report, and the picture. */
    void tell(Review review, Surroundings surroundings) throws Refused {
        if (csv) {
            byte[] table = ReviewCsv.print(review).getBytes(StandardCharsets.UTF_8);
            surroundings.out().write(table, 0, table.length);
        } else {
            new ReviewListing(review, surroundings.out()).print();
        }
        if (picture.isPresent()) {
            DataFile.write(
                    picture.get(), ByteBuffer.wrap(CallsPicture.of(review).png()));
            surroundings.err().println("Wrote " + picture.get() + ".");
        }
    }

    /** Plays the call that was asked for, or writes it. */
    void hear(Review review, Replay replay, Surroundings surroundings) throws Refused, InterruptedException {
        int number = hear.orElseThrow();
        int all = review.calls().size();
        if (number < 1 || number > all) {
            throw new Refused("There is no call " + number + " in this take; choose 1 to " + all + ".");
        }
        MonoSound sound = replay.of(review.calls().get(number - 1));
        if (output.isPresent()) {
            new WavFile().writeMono(sound.samples(), sound.rate(), WavFormat.PCM_16, output.get());
            surroundings.err().println("Wrote " + output.get() + ": as planned, then as you said it.");
            return;
        }
        try (Speakers speakers = surroundings.devices().open(Optional.empty(), ReplayPlay.RATE)) {
            surroundings.err().println("As planned, then as you said it.");
            ReplayPlay.play(sound, speakers);
        }
    }
}
