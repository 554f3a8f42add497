package cuelead.window.tracks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.lesson.Pace;
import cuelead.output.TrackFormat;
import cuelead.time.Tempo;
import cuelead.window.tracks.TracksChosen.Older;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TracksChosenTest {
    private static final Pace NINETY = new Pace.Beats(new Tempo(90));

    @TempDir
    private Path temp;

    private TracksChosen chosen(Matter matter, String name, Older older, Pace... paces) {
        return new TracksChosen(matter, List.of(paces), new Tempo(104), TrackFormat.MP3, temp, name, older);
    }

    private static List<String> names(TracksChosen chosen) {
        return chosen.files().stream()
                .map(paced -> paced.file().getFileName().toString())
                .toList();
    }

    @Test
    void aNameTellsTheDanceWhatItIsAndHowFast() {
        assertEquals(
                List.of("Lamp, walk.mp3", "Lamp, full.mp3", "Lamp, 90 beats a minute.mp3"),
                names(chosen(Matter.SONG_AND_CALLS, "Lamp", Older.STAYS, Pace.WALK, Pace.FULL, NINETY)));
        assertEquals(
                List.of("Lamp, walkthrough, steady.mp3"),
                names(chosen(Matter.WALKTHROUGH, "Lamp", Older.STAYS, Pace.STEADY)));
    }

    /** 0.65 of 104 is 67.6. */
    @Test
    void theTempoOfClicksIsKnown() {
        assertEquals(
                List.of("Lamp, clicks, 68 beats a minute.mp3"),
                names(chosen(Matter.CLICKS_AND_CALLS, "Lamp", Older.STAYS, Pace.WALK)));
    }

    @Test
    void twoWaysToTheSameNameAreOneFile() {
        TracksChosen chosen =
                chosen(Matter.CLICKS_AND_CALLS, "Lamp", Older.STAYS, Pace.FULL, new Pace.Beats(new Tempo(104)), NINETY);
        assertEquals(
                List.of("Lamp, clicks, 104 beats a minute.mp3", "Lamp, clicks, 90 beats a minute.mp3"), names(chosen));
    }

    @Test
    void aNameThatIsTakenGetsANumberUnlessItIsToBeReplaced() throws Exception {
        Files.createFile(temp.resolve("Lamp, full.mp3"));
        Files.createFile(temp.resolve("Lamp, full (2).mp3"));
        TracksChosen stays = chosen(Matter.SONG_AND_CALLS, "Lamp", Older.STAYS, Pace.FULL, Pace.WALK);
        assertEquals(List.of("Lamp, full (3).mp3", "Lamp, walk.mp3"), names(stays));
        assertEquals(1, stays.alreadyThere());
        assertEquals(
                List.of("Lamp, full.mp3"), names(chosen(Matter.SONG_AND_CALLS, "Lamp", Older.IS_REPLACED, Pace.FULL)));
    }

    @Test
    void whatNoSystemTakesInANameIsLeftOut() {
        assertEquals(
                List.of("who me, full.mp3"),
                names(chosen(Matter.SONG_AND_CALLS, "../who: \"me\"?\t.", Older.STAYS, Pace.FULL)));
        assertEquals(List.of("track, full.mp3"), names(chosen(Matter.SONG_AND_CALLS, " / ", Older.STAYS, Pace.FULL)));
        String longest = names(chosen(Matter.SONG_AND_CALLS, "la ".repeat(200), Older.STAYS, Pace.FULL))
                .get(0);
        assertTrue(longest.length() < 140, longest);
    }
}
