package cuelead.window.tracks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.lesson.Pace;
import cuelead.output.TrackFormat;
import cuelead.practice.Places;
import cuelead.practice.Progress;
import cuelead.practice.Wish;
import cuelead.report.Refused;
import cuelead.time.Tempo;
import cuelead.window.tracks.TracksChosen.Older;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TracksWorkTest {
    private static final String SHEET = """
            HARBOUR STEPS
            Count: 8   Wall: 1   Level: Beginner
            [1-8] SIDE TOGETHER, SIDE TOUCH
            1-2   Step right to right side, step left beside right
            3-4   Step right to right side, touch left beside right
            5-6   Step left to left side, step right beside left
            7-8   Step left to left side, touch right beside left
            """;

    @TempDir
    private Path temp;

    private Path sheet;
    private Path folder;

    @BeforeEach
    void aDance() throws Exception {
        sheet = Files.writeString(temp.resolve("steps.txt"), SHEET);
        folder = Files.createDirectory(temp.resolve("tracks"));
    }

    private TracksWork work(Matter matter, Older older, Pace... paces) {
        Tempo clicks = new Tempo(160);
        TracksChosen chosen = new TracksChosen(matter, List.of(paces), clicks, TrackFormat.WAV, folder, "Steps", older);
        Wish wish = Wish.of(sheet).tempo(Optional.of(clicks)).wish();
        return new TracksWork(wish, new Places(temp.resolve("cache"), temp), chosen, chosen.files());
    }

    private List<String> there() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void eachPaceIsAFileAndTheSlowerOneIsLonger() throws Exception {
        List<Path> written = work(Matter.CLICKS_AND_CALLS, Older.STAYS, Pace.STEADY, Pace.FULL)
                .run(Progress.UNTOLD);
        assertEquals(
                List.of("Steps, clicks, 128 beats a minute.wav", "Steps, clicks, 160 beats a minute.wav"), there());
        // 44 bytes of header and the tags aside, as long as the beats
        assertEquals(1.25, (double) Files.size(written.get(0)) / Files.size(written.get(1)), 0.05);
    }

    @Test
    void whatIsBrokenOffLeavesNothing() throws Exception {
        Progress breaksOff = (what, done) -> {
            if (what.startsWith("Writing") && done > 0.5) {
                throw new CancellationException();
            }
        };
        TracksWork work = work(Matter.CLICKS_AND_CALLS, Older.STAYS, Pace.FULL);
        assertThrows(CancellationException.class, () -> work.run(breaksOff));
        assertEquals(List.of(), there());
    }

    /** The second file only: the first one is whole and stays. */
    @Test
    void whatWasWrittenBeforeItWasBrokenOffStays() throws Exception {
        Progress breaksOff = (what, done) -> {
            if (what.equals("Writing (2 of 2)")) {
                throw new CancellationException();
            }
        };
        TracksWork work = work(Matter.CLICKS_AND_CALLS, Older.STAYS, Pace.FULL, Pace.WALK);
        assertThrows(CancellationException.class, () -> work.run(breaksOff));
        assertEquals(List.of("Steps, clicks, 160 beats a minute.wav"), there());
    }

    @Test
    void aFileThatCameMeanwhileIsNotWrittenOver() throws Exception {
        TracksWork work = work(Matter.CLICKS_AND_CALLS, Older.STAYS, Pace.FULL);
        Path mine = Files.writeString(folder.resolve("Steps, clicks, 160 beats a minute.wav"), "mine");
        Refused refused = assertThrows(Refused.class, () -> work.run(Progress.UNTOLD));
        assertTrue(refused.getMessage().contains("is there already"), refused.getMessage());
        assertEquals("mine", Files.readString(mine));
    }

    @Test
    void oneThatIsToBeReplacedIs() throws Exception {
        Path mine = Files.writeString(folder.resolve("Steps, clicks, 160 beats a minute.wav"), "mine");
        work(Matter.CLICKS_AND_CALLS, Older.IS_REPLACED, Pace.FULL).run(Progress.UNTOLD);
        assertTrue(Files.size(mine) > 1000);
        assertEquals(1, there().size());
    }

    @Test
    void aDanceWithoutASongGivesNoSong() throws Exception {
        TracksWork work = work(Matter.SONG_ALONE, Older.STAYS, Pace.STEADY);
        Refused refused = assertThrows(Refused.class, () -> work.run(Progress.UNTOLD));
        assertEquals("The dance has no song: choose one first.", refused.getMessage());
        assertEquals(List.of(), there());
    }

    @Test
    void aFolderThatIsGoneIsTold() throws Exception {
        TracksWork work = work(Matter.CLICKS_AND_CALLS, Older.STAYS, Pace.FULL);
        Files.delete(folder);
        Refused refused = assertThrows(Refused.class, () -> work.run(Progress.UNTOLD));
        assertTrue(refused.getMessage().contains("choose another one"), refused.getMessage());
        assertFalse(Files.exists(folder));
    }
}
