package cuelead.output;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import cuelead.report.Refused;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DataFileTest {
    @TempDir
    private Path temp;

    @Test
    void anOlderFileIsReplaced() throws Exception {
        Path file = temp.resolve("calls.png");
        DataFile.write(file, ByteBuffer.wrap(new byte[] {1, 2, 3, 4}));
        DataFile.write(file, ByteBuffer.wrap(new byte[] {5, 6}));
        assertArrayEquals(new byte[] {5, 6}, Files.readAllBytes(file));
        try (Stream<Path> files = Files.list(temp)) {
            assertEquals(List.of(file), files.toList());
        }
    }

    @Test
    void whereItCannotBeWrittenOneSentenceSaysSo() {
        Path file = temp.resolve("none").resolve("calls.png");
        assertThrows(Refused.class, () -> DataFile.write(file, ByteBuffer.wrap(new byte[] {1})));
    }
}
