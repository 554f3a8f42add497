package cuelead.cli;

import cuelead.output.WavFile;
import cuelead.output.WavFormat;
import cuelead.practice.Practice;
import cuelead.practice.Wish;
import cuelead.report.Refused;
import cuelead.song.BeatFile;
import cuelead.song.Song;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
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
            "The WAV file holds the same that \"play\" lets you hear.",
            "Take the song's licence into account before you hand such a file on."
        },
        footer = {
            "",
            "Examples:",
            "  cuelead render cues/lamp-on-the-quay.txt -o practice.wav",
            "  cuelead render my-sheet.txt my-song.mp3 -o practice.wav --calls figures --fade",
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
            description = "The WAV file to write.")
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
        checkTargets(wish);
        PracticeStart start = new PracticeStart(surroundings, wish);
        try (Practice practice = start.prepare()) {
            Targets.checkNotRead(Targets.of(output, stems), filesOf(practice));
            try (ProgressLine progress = new ProgressLine(surroundings)) {
                write(practice, progress);
            }
            start.tellProblems(practice);
            tellWhatWasWritten(practice);
            start.remindOfErrors(practice);
        }
        return Failures.DONE;
    }

    private void checkTargets(Wish wish) throws Refused {
        Targets.checkSoundFile(output);
        List<Path> targets = Targets.of(output, stems);
        Targets.checkDifferent(output, targets.subList(1, targets.size()));
        List<Path> read = new ArrayList<>(List.of(wish.sheet()));
        wish.song().ifPresent(read::add);
        Targets.checkNotRead(targets, read);
        if (stems.isPresent()) {
            Targets.checkFolder(stems.get());
            List<Path> clips = List.of(stems.get().resolve(Stems.CLIPS));
            Targets.checkNotRead(clips, wish.ownWords().map(List::of).orElse(List.of()));
        }
    }

    private static List<Path> filesOf(Practice practice) {
        return practice.song()
                .map(Song::file)
                .map(song -> List.of(song, BeatFile.beside(song)))
                .orElse(List.of());
    }

    private void write(Practice practice, ProgressLine progress) throws Refused, InterruptedException {
        practice.await(practice.toFrame());
        long frames = practice.toFrame() - practice.fromFrame();
        CountedSound mix = new CountedSound(practice.mix(), frames, "Writing", progress);
        new WavFile().write(mix, practice.rate(), WavFormat.PCM_16, output);
        if (stems.isPresent()) {
            new Stems(practice, progress).write(stems.get());
        }
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
