package cuelead.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The line that is drawn again, and keys. */
class TerminalTest {
    private final ByteArrayOutputStream drawn = new ByteArrayOutputStream();
    private final Screen screen = new Screen(new PrintStream(drawn, true, StandardCharsets.UTF_8));

    @Test
    void aLineIsDrawnOverTheOneBefore() {
        screen.show("rock forward");
        screen.show("rock");
        screen.show("rock");
        screen.clear();
        screen.clear();
        assertEquals("\rrock forward\rrock        \r    \r", drawn.toString(StandardCharsets.UTF_8));
    }

    @Test
    void aLineNeverWraps() {
        screen.show("x".repeat(200));
        assertEquals(1 + 79, drawn.size());
    }

    @Test
    void lettersAreKeysAndTheEndIsNone() {
        Keys keys = Keys.unread();
        keys.read(new ByteArrayInputStream("xp\nQ".getBytes(StandardCharsets.US_ASCII)));
        assertEquals(Optional.of(Keys.Key.PAUSE_OR_GO_ON), keys.poll());
        assertEquals(Optional.of(Keys.Key.QUIT), keys.poll());
        assertTrue(keys.poll().isEmpty());
    }
}
