package cuelead.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.steer.Order;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.jline.terminal.impl.LineDisciplineTerminal;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A terminal that is typed on while a practice is made ready. */
class PlayerKeysTest {
    private static final long PATIENCE_MILLIS = 10_000;
    private static final String DOWN = "\033[B";

    private final ByteArrayOutputStream echoed = new ByteArrayOutputStream();
    private final ByteArrayOutputStream printed = new ByteArrayOutputStream();
    private LineDisciplineTerminal terminal;
    private PlayerKeys keys;

    @BeforeEach
    void open() throws Exception {
        terminal = new LineDisciplineTerminal("test", "ansi", echoed, StandardCharsets.UTF_8);
        keys = new PlayerKeys(terminal, new PrintStream(printed, true, StandardCharsets.UTF_8));
    }

    @AfterEach
    void close() {
        keys.close();
    }

    private void type(String text) throws Exception {
        terminal.processInputBytes(text.getBytes(StandardCharsets.US_ASCII));
        keys.await(PATIENCE_MILLIS);
    }

    @Test
    void whatIsPressedBeforehandIsNotEchoedButObeyed() throws Exception {
        type(DOWN + "q");
        keys.begin();
        assertEquals("", echoed.toString(StandardCharsets.UTF_8));
        assertEquals(Optional.of(Order.NEXT_WALL), keys.next());
        keys.await(PATIENCE_MILLIS);
        assertEquals(Optional.of(Order.QUIT), keys.next());
    }

    @Test
    void startingIsSaidUntilThereIsMore() {
        keys.begin();
        keys.close();
        keys.close(); // once more does nothing
        assertEquals("\rStarting ...\r" + " ".repeat(12) + "\r", printed.toString(StandardCharsets.UTF_8));
    }
}
