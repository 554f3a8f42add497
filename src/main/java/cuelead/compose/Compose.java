package cuelead.compose;

import cuelead.report.Problem;
import cuelead.report.Refused;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The command that makes songs of scores: {@code java -cp target/cuelead.jar cuelead.compose.Compose --help}. */
@Command(
        name = "compose",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = "Makes a song (MP3) and its exact beat file of each score.",
        footer = {
            "",
            "Needs fluidsynth, the FluidR3 GM sound font and lame.",
            "Example: java -cp target/cuelead.jar cuelead.compose.Compose demo-songs/scores/*.score -o demo-songs"
        })
public final class Compose implements Callable<Integer> {
    private static final String ENDING = ".score";
    private static final List<Path> USUAL_SOUND_FONTS = List.of(
            Path.of("/usr/share/sounds/sf2/FluidR3_GM.sf2"),
            Path.of("/usr/share/soundfonts/FluidR3_GM.sf2"),
            Path.of("/usr/share/soundfonts/FluidR3_GM2-2.sf2"));

    @Parameters(paramLabel = "SCORE", arity = "1..*", description = "scores to read")
    private List<Path> scores = List.of();

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FOLDER",
            defaultValue = ".",
            description = "where songs and beat files go (default: here)")
    private Path output = Path.of(".");

    @Option(names = "--sound-font", paramLabel = "FILE", description = "a General MIDI sound font (default: FluidR3)")
    private Optional<Path> soundFont = Optional.empty();

    @Option(names = "--beats-only", description = "write the beat files only; needs no other program")
    private boolean beatsOnly;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    public static void main(String[] args) {
        System.exit(new CommandLine(new Compose()).execute(args));
    }

    @Override
    public Integer call() {
        PrintWriter say = spec.commandLine().getErr();
        int failed = 0;
        for (Path file : scores) {
            try {
                make(file, say);
            } catch (Refused refused) {
                say.println(refused.getMessage());
                failed++;
            }
        }
        say.flush();
        return failed == 0 ? 0 : 1;
    }

    private void make(Path file, PrintWriter say) throws Refused {
        Score score = read(file, say);
        Arrangement arrangement = Arranger.arrange(score);
        Performance performance = Performer.perform(score, arrangement);
        if (!beatsOnly) {
            writeSong(score, performance, output.resolve(score.name() + ".mp3"));
        }
        Path beats = output.resolve(score.name() + ".beats");
        writeText(beats, BeatSheet.text(score, arrangement, performance));
        say.println(score.header().title() + ": " + performance.beats().size() + " beats, "
                + Math.round(performance.seconds()) + " s, in " + output);
    }

    private static Score read(Path file, PrintWriter say) throws Refused {
        String name = file.getFileName().toString();
        String plainName = name.endsWith(ENDING) ? name.substring(0, name.length() - ENDING.length()) : name;
        ScoreReader.Reading reading = ScoreReader.read(file.toString(), plainName, text(file));
        reading.problems().stream().map(Problem::message).forEach(say::println);
        return reading.score()
                .orElseThrow(() -> new Refused(
                        "The score " + file + " was not played: correct the mistakes above and try again."));
    }

    private static String text(Path file) throws Refused {
        try {
            return Files.readString(file);
        } catch (NoSuchFileException e) {
            throw new Refused("There is no score " + file + ".", e);
        } catch (CharacterCodingException e) {
            throw new Refused("The file " + file + " is not a score: it is not text in UTF-8.", e);
        } catch (IOException e) {
            throw new Refused("The score " + file + " cannot be read: " + e.getMessage(), e);
        }
    }

    private void writeSong(Score score, Performance performance, Path target) throws Refused {
        Renderer renderer = new Renderer(soundFontFile());
        Path folder = passingFolder();
        try {
            float[] rendered = renderer.render(MidiSong.of(score.band(), performance), folder);
            float[] mastered = new Mastering(Renderer.RATE).master(rendered, performance.seconds());
            Mp3Encoder.write(mastered, score.header().title(), target, folder);
        } finally {
            delete(folder);
        }
    }

    private Path soundFontFile() throws Refused {
        List<Path> candidates = soundFont.map(List::of).orElse(USUAL_SOUND_FONTS);
        return candidates.stream()
                .filter(Files::isReadable)
                .findFirst()
                .orElseThrow(() -> new Refused("There is no sound font " + candidates.get(0)
                        + "; install it (Debian: apt install fluid-soundfont-gm) or name one with --sound-font."));
    }

    private static Path passingFolder() throws Refused {
        try {
            return Files.createTempDirectory("cuelead-compose");
        } catch (IOException e) {
            throw new Refused("No temporary folder can be made: " + e.getMessage(), e);
        }
    }

    private static void delete(Path folder) {
        try (Stream<Path> files = Files.walk(folder)) {
            files.sorted(Comparator.reverseOrder())
                    .forEach(file -> file.toFile().delete());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void writeText(Path target, String text) throws Refused {
        Path part = target.resolveSibling("." + target.getFileName() + ".part");
        try {
            Files.writeString(part, text);
            Files.move(part, target, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            throw new Refused("The beat file " + target + " cannot be written: " + e.getMessage(), e);
        } finally {
            part.toFile().delete();
        }
    }
}
