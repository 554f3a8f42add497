package cuelead.song;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.report.Refused;
import cuelead.time.BeatGrid;
import cuelead.time.Tempo;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KeptBeatsTest {
    private final BeatGrid beats = BeatGrid.steady(new Tempo(120), 0.5, 40, 4);

    @TempDir
    private Path folder;

    private Path file() {
        return folder.resolve("my-song.beats");
    }

    private Path elsewhere() {
        return folder.resolve("kept").resolve("beats").resolve("1.beats");
    }

    @Test
    void whatWasNotThereIsGoneAgain() throws Exception {
        KeptBeats kept = new KeptBeats(file(), elsewhere());
        kept.keep(beats, List.of(" corrected: twice"));
        assertEquals(Optional.of(beats), BeatFile.read(file()).beats());
        kept.restore();
        assertFalse(Files.exists(file()));
        kept.restore();
        assertFalse(Files.exists(file()));
    }

    /** To the last byte, with the user's own comments behind beats. */
    @Test
    void whatWasThereIsThereAgain() throws Exception {
        byte[] before = "# by hand\r\n0.5 1 # here\r\n1.0 2\r\n".getBytes(java.nio.charset.StandardCharsets.UTF_8);
        Files.write(file(), before);
        KeptBeats kept = new KeptBeats(file(), elsewhere());
        kept.keep(beats, List.of());
        kept.restore();
        assertArrayEquals(before, Files.readAllBytes(file()));
    }

    @Test
    void whatAnotherProgramWroteStays() throws Exception {
        KeptBeats kept = new KeptBeats(file(), elsewhere());
        kept.keep(beats, List.of());
        Files.writeString(file(), "0.1\t1\n0.7\t2\n");
        assertThrows(Refused.class, () -> kept.keep(beats, List.of(" corrected: half")));
        assertThrows(Refused.class, kept::restore);
        assertEquals("0.1\t1\n0.7\t2\n", Files.readString(file()));
    }

    /** A file whose folder is a file cannot be written, whoever is asked. */
    @Test
    void whereItCannotBeWrittenItIsKeptElsewhere() throws Exception {
        Files.writeString(folder.resolve("song-folder"), "");
        Path there = folder.resolve("song-folder").resolve("my-song.beats");
        KeptBeats kept = new KeptBeats(elsewhere().resolveSibling("none.beats"), elsewhere());
        assertEquals(elsewhere().resolveSibling("none.beats"), kept.file());
        kept.keep(beats, List.of());
        assertEquals(elsewhere(), kept.file());
        assertTrue(Files.exists(elsewhere()));
        kept.restore();
        assertFalse(Files.exists(elsewhere()));
        assertThrows(Refused.class, () -> new KeptBeats(there, there).keep(beats, List.of()));
    }

    @Test
    void aSongThatIsMovedFindsTheBeatsThatAreKeptApart() throws Exception {
        Path song = Files.writeString(folder.resolve("one.mp3"), "sound");
        Path apart = folder.resolve("kept");
        assertEquals(BeatFile.beside(song), BeatFile.of(song, apart));
        Files.createDirectories(apart);
        assertEquals(BeatFile.beside(song), BeatFile.of(song, apart));
        BeatFile.write(BeatFile.apart(song, apart), beats, List.of());
        Path moved = Files.move(song, folder.resolve("two.mp3"));
        assertEquals(
                Optional.of(beats), BeatFile.read(BeatFile.of(moved, apart)).beats());
    }
}
