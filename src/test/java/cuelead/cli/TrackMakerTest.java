package cuelead.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.lesson.Pace;
import cuelead.output.WavFile;
import cuelead.output.WavFormat;
import cuelead.practice.Places;
import cuelead.practice.Progress;
import cuelead.practice.Wish;
import cuelead.report.Refused;
import cuelead.sound.Sound;
import cuelead.steer.TrackMaker;
import cuelead.time.SampleRate;
import cuelead.time.Tempo;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is made here is, byte for byte, what the commands write. */
class TrackMakerTest {
    private static final SampleRate RATE = new SampleRate(22_050);
    private static final int SECONDS = 20;

    private static final String SHEET = """
            HARBOUR STEPS
            Count: 8   Wall: 1   Level: Beginner
            Intro: 8 counts
            [1-8] SIDE TOGETHER, SIDE TOUCH
            1-2   Step right to right side, step left beside right
            3-4   Step right to right side, touch left beside right
            5-6   Step left to left side, step right beside left
            7-8   Step left to left side, touch right beside left
            """;

    @TempDir
    private Path temp;

    private Bench bench;
    private Path sheet;
    private Path song;
    private Path command;
    private Path made;

    /** A tone of some seconds. */
    private static final class Tone implements Sound {
        private int next;

        @Override
        public int read(float[] interleaved, int frames) {
            int wanted = Math.min(frames, SECONDS * RATE.hz() - next);
            for (int i = 0; i < wanted; i++, next++) {
                interleaved[2 * i] = (float) (0.2 * Math.sin(0.1 * next));
                interleaved[2 * i + 1] = interleaved[2 * i];
            }
            return wanted;
        }
    }

    /** 120 beats a minute. */
    @BeforeEach
    void aDanceAndItsSong() throws Exception {
        bench = Bench.withoutDevice(temp);
        sheet = Files.writeString(temp.resolve("steps.txt"), SHEET);
        song = temp.resolve("tone.wav");
        new WavFile().write(new Tone(), RATE, WavFormat.PCM_16, song);
        Files.writeString(
                temp.resolve("tone.beats"),
                IntStream.range(0, 2 * SECONDS - 2)
                        .mapToObj(beat -> String.format(Locale.ROOT, "%.3f\t%d%n", 0.5 + 0.5 * beat, 1 + beat % 4))
                        .collect(Collectors.joining()));
        command = temp.resolve("command.wav");
        made = temp.resolve("made.wav");
    }

    private TrackMaker maker(Wish wish) throws Refused {
        return new TrackMaker(wish, new Places(temp.resolve("cache"), Bench.PROJECT), Progress.UNTOLD);
    }

    private TrackMaker withSong() throws Refused {
        return maker(Wish.of(sheet).song(Optional.of(song)).wish());
    }

    private void command(String... arguments) {
        Bench.Outcome outcome = bench.run(arguments);
        assertEquals(0, outcome.exitCode(), outcome.err());
    }

    private void assertSame() throws Exception {
        assertArrayEquals(Files.readAllBytes(command), Files.readAllBytes(made));
    }

    @Test
    void aDanceWithItsSong() throws Exception {
        command("render", sheet.toString(), song.toString(), "-o", command.toString(), "--speed", "0.8");
        withSong().make(TrackMaker.Content.DANCE, Pace.STEADY, made, Progress.UNTOLD);
        assertSame();
    }

    /** 90 of 120 beats a minute are three quarters. */
    @Test
    void aTempoIsASpeedOfTheSong() throws Exception {
        command("render", sheet.toString(), song.toString(), "-o", command.toString(), "--speed", "0.75");
        withSong().make(TrackMaker.Content.DANCE, new Pace.Beats(new Tempo(90)), made, Progress.UNTOLD);
        assertSame();
    }

    @Test
    void aTempoThatTheSongCannotHaveIsToldWithItsRange() {
        Refused refused = assertThrows(
                Refused.class,
                () -> withSong().make(TrackMaker.Content.DANCE, new Pace.Beats(new Tempo(40)), made, Progress.UNTOLD));
        assertEquals(
                "The song has 120 beats a minute and can be played at 48 to 150; choose a tempo in between.",
                refused.getMessage());
    }

    @Test
    void aDanceToClicks() throws Exception {
        command("render", sheet.toString(), "-o", command.toString(), "--tempo", "130");
        maker(Wish.of(sheet).tempo(Optional.of(new Tempo(200))).wish())
                .make(TrackMaker.Content.DANCE, Pace.WALK, made, Progress.UNTOLD);
        assertSame();
    }

    @Test
    void aWalkthrough() throws Exception {
        command("walkthrough", sheet.toString(), song.toString(), "-o", command.toString(), "--speed", "0.8");
        withSong().make(TrackMaker.Content.WALKTHROUGH, Pace.STEADY, made, Progress.UNTOLD);
        assertSame();
    }

    /** The copy's beats lie beside it, as those of the song lie beside the song. */
    @Test
    void theSongAlone() throws Exception {
        command("stretch", song.toString(), command.toString(), "--speed", "0.8");
        withSong().make(TrackMaker.Content.SONG, Pace.STEADY, made, Progress.UNTOLD);
        assertSame();
        assertTrue(Files.exists(temp.resolve("made.beats")));
    }

    @Test
    void whatIsReadForItIsNotWrittenOver() throws Exception {
        byte[] before = Files.readAllBytes(song);
        TrackMaker maker = withSong();
        assertThrows(Refused.class, () -> maker.make(TrackMaker.Content.DANCE, Pace.FULL, song, Progress.UNTOLD));
        assertArrayEquals(before, Files.readAllBytes(song));
    }
}
