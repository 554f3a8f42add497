package cuelead.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cuelead.practice.Places;
import cuelead.steer.OpenAlDevices;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ProgressLineTest {
    @TempDir
    private Path temp;

    private final ByteArrayOutputStream err = new ByteArrayOutputStream();
    private long nanos = -7;

    private Surroundings surroundings(Terminal.End end) {
        return new Surroundings(
                InputStream.nullInputStream(),
                new PrintStream(OutputStream.nullOutputStream(), true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                new Terminal(Terminal.End.OTHER, Terminal.End.OTHER, end),
                Map.of(),
                new Places(temp, temp),
                temp,
                temp,
                Optional.empty(),
                new OpenAlDevices());
    }

    /** Work that takes 12 seconds and is told of ten times a second. */
    @Test
    void whereNothingIsDrawnAgainLongWorkIsToldEveryFiveSeconds() {
        try (ProgressLine line = new ProgressLine(surroundings(Terminal.End.OTHER), () -> nanos)) {
            for (int tenths = 0; tenths <= 120; tenths++) {
                line.at("Writing", tenths / 120.0);
                nanos += TimeUnit.MILLISECONDS.toNanos(100);
            }
            line.at("Tidying", 1);
        }
        assertEquals(
                List.of("Writing ...", "Writing 42 %", "Writing 83 %", "Tidying ..."),
                err.toString(StandardCharsets.UTF_8).lines().toList());
    }
}
