package cuelead.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** The line that is drawn again. */
class TerminalTest {
    private final ByteArrayOutputStream drawn = new ByteArrayOutputStream();
    private final Screen screen = new Screen(new PrintStream(drawn, true, StandardCharsets.UTF_8), 79);

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
}
