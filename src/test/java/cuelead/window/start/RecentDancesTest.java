package cuelead.window.start;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.window.frame.Recent;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class RecentDancesTest {
    private static final Path KEPT = Path.of("kept", "sheets");

    @Test
    void belowADanceStandsItsMusicOrElseItsSheet() {
        Path sheet = Path.of("mine", "ramble.txt");
        assertEquals("ramble.txt", RecentDances.below(new Recent("Ramble", sheet, Optional.empty()), KEPT));
        Optional<Path> song = Optional.of(Path.of("songs", "ramble.mp3"));
        assertEquals("ramble.mp3", RecentDances.below(new Recent("Ramble", sheet, song), KEPT));
    }

    @Test
    void aCopyIsToldFromItsSheet() {
        Recent copy = new Recent("Ramble", KEPT.resolve("ramble.txt"), Optional.empty());
        assertEquals("ramble.txt, sheet kept by Cuelead", RecentDances.below(copy, KEPT));
    }
}
