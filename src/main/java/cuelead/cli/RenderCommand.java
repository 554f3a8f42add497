package cuelead.cli;

import cuelead.output.TrackTags;
import cuelead.practice.Practice;
import cuelead.practice.Wish;
import cuelead.steer.Caution;
import cuelead.steer.Told;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Writes a practice track into a file. */
@Command(
        name = "render",
        header = "Write a song with its calls into a file.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        sortOptions = false,
        description = {
            "The file holds the same that \"play\" lets you hear, with the dance as title and the tempo. Its ending names"
                    + " its format: .wav, .flac (as exact, half as large) or .mp3 (small). The music rises at its"
                    + " beginning within a second and a half.",
            Caution.OF_LICENCES
        },
        footer = {
            "",
            "Examples:",
            "  cuelead render cues/lamp-on-the-quay.txt -o practice.wav",
            "  cuelead render my-sheet.txt my-song.mp3 -o practice.mp3 --calls figures --fade",
            "  cuelead render my-sheet.txt --tempo 90 -o slow.wav       without music",
            "  cuelead render my-sheet.txt my-song.mp3 -o part.wav --from 30 --to 75.5"
        })
final class RenderCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Mixin
    private PracticeOptions options;

    @Option(
            names = {"-o", "--output"},
            required = true,
            paramLabel = "FILE",
            description = "The file to write: .wav, .flac or .mp3.")
    private Path output;

    @Option(
            names = "--stems",
            paramLabel = "DIR",
            description = "Also write the parts into this folder: voice.wav, music.wav (with its dips), plan.csv,"
                    + " segs.csv (the sounds of the words) and clips/ (each word). Times in them count from the first"
                    + " frame of the track.")
    private Optional<Path> stems;

    RenderCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws Exception {
        Wish wish = options.wish();
        TrackTarget target = new TrackTarget(surroundings, output, stems);
        target.check(wish);
        PracticeStart start = new PracticeStart(surroundings, wish);
        try (Practice practice = start.prepare()) {
            target.check(practice);
            start.awaitWhole(practice);
            TrackTags tags = new TrackTags(
                    practice.dance().header().title(),
                    practice.timeline().grid().medianTempo());
            target.write(practice, tags);
            start.tellProblems(practice);
            tellWhatWasWritten(practice);
            target.remindOfLicence(practice);
            start.remindOfErrors(practice);
        }
        return Failures.DONE;
    }

    private void tellWhatWasWritten(Practice practice) {
        double seconds = practice.rate().secondsAt(practice.toFrame() - practice.fromFrame());
        String parts = stems.map(folder -> " and its parts into " + folder).orElse("");
        surroundings
                .err()
                .println("Wrote " + output + " (" + Told.minutes(seconds) + ", "
                        + Told.number(practice.spokenCalls().size(), "call") + ")" + parts + ".");
    }
}
