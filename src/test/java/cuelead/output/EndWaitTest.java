package cuelead.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class EndWaitTest {
    @Test
    void anEndIsToldAtOnce() throws Exception {
        assertTrue(EndWait.until(() -> true, 60_000));
        AtomicInteger looks = new AtomicInteger();
        assertTrue(EndWait.until(() -> looks.incrementAndGet() > 1, 60_000));
        assertEquals(3, looks.get());
    }

    @Test
    void nobodyWaitsWithoutTime() throws Exception {
        assertFalse(EndWait.until(() -> false, 0));
    }

    @Test
    void whoIsInterruptedDoesNotWait() {
        Thread.currentThread().interrupt();
        assertThrows(InterruptedException.class, () -> EndWait.until(() -> false, 60_000));
        assertFalse(Thread.currentThread().isInterrupted());
    }
}
