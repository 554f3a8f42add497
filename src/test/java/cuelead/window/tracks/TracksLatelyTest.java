package cuelead.window.tracks;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.output.TrackFormat;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TracksLatelyTest {
    @TempDir
    private Path temp;

    @Test
    void itIsThereTheNextTimeAsLongAsItsFolderIs() throws Exception {
        Path kept = temp.resolve("kept");
        Path folder = Files.createDirectory(temp.resolve("my tracks"));
        assertEquals(Optional.empty(), TracksLately.in(kept));
        TracksLately lately = new TracksLately(folder, TrackFormat.FLAC);
        lately.keep(kept);
        assertEquals(Optional.of(lately), TracksLately.in(kept));
        Files.delete(folder);
        assertEquals(Optional.empty(), TracksLately.in(kept));
    }

    @Test
    void nonsenseIsNothing() throws Exception {
        for (String text : new String[] {"", temp + "\n", temp + "\nOGG\n", "a\u0000b\nWAV\n"}) {
            Files.writeString(temp.resolve("tracks.txt"), text);
            assertEquals(Optional.empty(), TracksLately.in(temp), text);
        }
    }
}
