package cuelead.cli;

import cuelead.report.Problem;
import cuelead.report.Refused;
import cuelead.song.BeatFile;
import cuelead.song.BeatFit;
import cuelead.song.Song;
import cuelead.song.SongFile;
import cuelead.time.BeatGrid;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Prints the beats of a song. */
@Command(
        name = "beats",
        header = "Print the beats of a song.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = {
            "Prints the beats that are used for a song, as a beat file: seconds, beat in the bar, count in the phrase,"
                    + " parted by tabs.",
            "They are read from the beat file beside the song (my-song.beats beside my-song.mp3)."
        },
        footer = {"", "Examples:", "  cuelead beats my-song.mp3", "  cuelead beats my-song.mp3 > copy-of-my-song.beats"
        })
final class BeatsCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Parameters(index = "0", paramLabel = "SONG", description = "The song.")
    private Path file;

    BeatsCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws Exception {
        double songSeconds = lengthSeconds();
        Path beatFile = BeatFile.beside(file);
        if (!Files.exists(beatFile)) {
            throw new Refused("There is no beat file " + beatFile + " beside the song; write one, a line a beat:"
                    + " seconds, a tab, beat in the bar (1 = first).");
        }
        BeatFile.Reading reading = BeatFile.read(beatFile);
        List<Problem> problems = new ArrayList<>(reading.problems());
        reading.beats().ifPresent(beats -> problems.addAll(BeatFit.check(beatFile.toString(), beats, songSeconds)));
        new ProblemPrinter(surroundings.err()).tellInFull(problems);
        if (reading.beats().isEmpty() || problems.stream().anyMatch(BeatsCommand::isError)) {
            return Failures.REFUSED;
        }
        BeatGrid beats = reading.beats().get();
        surroundings.out().write(BeatFile.print(beats, reading.comments()).getBytes(StandardCharsets.UTF_8));
        surroundings.err().println(summary(beats, beatFile));
        return Failures.DONE;
    }

    private static boolean isError(Problem problem) {
        return problem.severity() == Problem.Severity.ERROR;
    }

    private double lengthSeconds() throws Refused {
        try (Song song = SongFile.open(file, Optional.empty())) {
            return song.pcm().lengthSeconds();
        }
    }

    private static String summary(BeatGrid beats, Path beatFile) {
        double shortest = Double.MAX_VALUE;
        double longest = 0;
        for (int i = 1; i < beats.size(); i++) {
            double gap = beats.beatSeconds(i) - beats.beatSeconds(i - 1);
            shortest = Math.min(shortest, gap);
            longest = Math.max(longest, gap);
        }
        return String.format(
                Locale.ROOT,
                "%d beats from %s: %.1f a minute, slowest %.1f, fastest %.1f; the first bar begins at %s.",
                beats.size(),
                beatFile,
                beats.medianTempo().beatsPerMinute(),
                60 / longest,
                60 / shortest,
                Told.minutes(beats.beatSeconds(beats.firstDownbeat())));
    }
}
