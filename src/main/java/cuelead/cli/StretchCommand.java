package cuelead.cli;

import cuelead.output.WavFile;
import cuelead.output.WavFormat;
import cuelead.report.Refused;
import cuelead.song.Song;
import cuelead.song.SongFile;
import cuelead.sound.SlowedMusic;
import cuelead.time.Speed;
import cuelead.time.TimeMap;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
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
            "Take the song's licence into account before you hand such a file on."
        },
        footer = {"", "Examples:", "  cuelead stretch my-song.mp3 my-song-slow.wav --speed 0.75"})
final class StretchCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Parameters(index = "0", paramLabel = "SONG", description = "The song: MP3, WAV, AIFF, OGG or FLAC.")
    private Path input;

    @Parameters(index = "1", paramLabel = "FILE", description = "The WAV file to write.")
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
        Targets.checkSoundFile(output);
        Targets.checkNotRead(List.of(output), List.of(input));
        try (Song song = SongFile.open(input, Optional.empty())) {
            try (ProgressLine progress = new ProgressLine(surroundings)) {
                song.awaitLoaded();
                write(song, progress);
            }
            new ProblemPrinter(surroundings.err()).tellInShort(song.problems());
            double seconds = song.pcm().lengthSeconds();
            surroundings
                    .err()
                    .println("Wrote " + output + " (" + Told.minutes(seconds / speed.ratio()) + " for "
                            + Told.minutes(seconds) + ").");
        }
        return Failures.DONE;
    }

    private void write(Song song, ProgressLine progress) throws Refused, InterruptedException {
        song.onsets().all();
        SlowedMusic slowed = song.slowed(TimeMap.even(speed));
        CountedSound copy = new CountedSound(slowed.whole(), slowed.lengthFrames(), "Writing", progress);
        WavFormat format = speed.isOriginal() ? WavFormat.PCM_16_ROUNDED : WavFormat.PCM_16;
        new WavFile().write(copy, slowed.rate(), format, output);
    }
}
