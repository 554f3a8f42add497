package cuelead.cli;

import cuelead.steer.Caution;
import cuelead.steer.SongCopy;
import cuelead.steer.Told;
import cuelead.time.Speed;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes a slower or faster copy of a song. */
@Command(
        name = "stretch",
        header = "Write a slower or faster copy of a song, at its own pitch.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        sortOptions = false,
        description = {
            "Drums stay sharp and everything stays where it belongs: what comes at 30 seconds in the song comes at"
                    + " 40 seconds in its copy at speed 0.75.",
            "The song's beats, from its beat file or as they are heard, are written beside the copy, moved likewise, so that"
                    + " the copy is danced to as the song is.",
            "Take the song's licence into account before you hand such a file on."
        },
        footer = {"", "Examples:", "  cuelead stretch my-song.mp3 my-song-slow.mp3 --speed 0.75"})
final class StretchCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Parameters(index = "0", paramLabel = "SONG", description = "The song: MP3, WAV, AIFF, OGG or FLAC.")
    private Path input;

    @Parameters(index = "1", paramLabel = "FILE", description = "The file to write: .wav, .flac or .mp3.")
    private Path output;

    @Option(
            names = "--speed",
            required = true,
            paramLabel = "SPEED",
            converter = Values.SpeedRatio.class,
            description = "How fast, 0.4 to 1.25: 0.75 is three quarters of the tempo.")
    private Speed speed;

    StretchCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws Exception {
        SongCopy copy = new SongCopy(input, output, speed);
        copy.check();
        SongCopy.Written written;
        try (ProgressLine progress = new ProgressLine(surroundings)) {
            written = copy.write(surroundings.places(), progress);
        }
        tell(written);
        return Failures.DONE;
    }

    private void tell(SongCopy.Written written) {
        new ProblemPrinter(surroundings.err()).tellInShort(written.problems());
        surroundings
                .err()
                .println("Wrote " + output + " (" + Told.minutes(written.songSeconds() / speed.ratio()) + " for "
                        + Told.minutes(written.songSeconds()) + ").");
        surroundings.err().println(Caution.OF_LICENCES);
        written.beats().ifPresent(file -> surroundings.err().println("Its beats are in " + file + "."));
        written.withoutBeats().ifPresent(why -> surroundings.err().println(why + "\nSo the copy gets no beat file."));
    }
}
