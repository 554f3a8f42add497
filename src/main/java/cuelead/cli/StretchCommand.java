package cuelead.cli;

import cuelead.output.Rounding;
import cuelead.output.TrackFile;
import cuelead.output.TrackFormat;
import cuelead.output.TrackTags;
import cuelead.practice.KnownBeats;
import cuelead.report.Refused;
import cuelead.song.Song;
import cuelead.song.SongFile;
import cuelead.sound.SlowedMusic;
import cuelead.steer.Told;
import cuelead.time.Speed;
import cuelead.time.Tempo;
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
        Targets.checkTrack(output);
        Targets.checkNotRead(List.of(output), List.of(input));
        CopiedBeats copied = new CopiedBeats(input, output, speed);
        copied.check();
        try (Song song = SongFile.open(input, Optional.empty())) {
            TrackFormat.of(output).checkRate(song.pcm().rate());
            Optional<KnownBeats> beats = beats(song);
            try (ProgressLine progress = new ProgressLine(surroundings)) {
                song.awaitLoaded();
                write(song, beats, progress);
            }
            new ProblemPrinter(surroundings.err()).tellInShort(song.problems());
            double seconds = song.pcm().lengthSeconds();
            surroundings
                    .err()
                    .println("Wrote " + output + " (" + Told.minutes(seconds / speed.ratio()) + " for "
                            + Told.minutes(seconds) + ").");
            surroundings.err().println(TrackTarget.LICENCE);
            if (beats.isPresent()) {
                surroundings.err().println(copied.write(beats.get(), song));
            }
        }
        return Failures.DONE;
    }

    /** A copy is of use without beats, too. */
    private Optional<KnownBeats> beats(Song song) {
        try (ProgressLine progress = new ProgressLine(surroundings)) {
            KnownBeats known = KnownBeats.of(song, surroundings.places(), progress);
            new ProblemPrinter(surroundings.err()).tellInShort(known.problems());
            return Optional.of(known);
        } catch (Refused without) {
            surroundings.err().println(without.getMessage());
            surroundings.err().println("So the copy gets no beat file.");
            return Optional.empty();
        }
    }

    private void write(Song song, Optional<KnownBeats> beats, ProgressLine progress)
            throws Refused, InterruptedException {
        song.onsets().all();
        SlowedMusic slowed = song.slowed(TimeMap.even(speed));
        CountedSound copy = new CountedSound(slowed.whole(), slowed.lengthFrames(), "Writing", progress);
        Rounding rounding = speed.isOriginal() ? Rounding.NEAREST : Rounding.DITHERED;
        new TrackFile().write(copy, slowed.rate(), tags(beats), rounding, output);
    }

    /** {@code my-song at 75 %}, and its tempo where that is known. */
    private TrackTags tags(Optional<KnownBeats> beats) {
        String name = Targets.withoutEnding(input);
        String title = speed.isOriginal() ? name : name + " at " + Told.decimal(100 * speed.ratio()) + " %";
        return new TrackTags(
                title,
                beats.map(known -> known.hearing().beats().medianTempo().beatsPerMinute() * speed.ratio())
                        .map(Tempo::new));
    }
}
