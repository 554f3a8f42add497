package cuelead.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The lines of the files that problems are about, read again to be shown. */
final class SourceLines {
    private static final long LARGEST_BYTES = 1 << 20;

    private final Map<String, List<String>> linesByFile = new HashMap<>();

    /**
     * A line as it is written, without its end.
     *
     * @param number 1-based
     * @return empty where there is no such line or the file cannot be read
     */
    Optional<String> line(String file, int number) {
        List<String> lines = linesByFile.computeIfAbsent(file, SourceLines::read);
        return number >= 1 && number <= lines.size() ? Optional.of(lines.get(number - 1)) : Optional.empty();
    }

    private static List<String> read(String file) {
        try {
            Path path = Path.of(file);
            if (Files.size(path) > LARGEST_BYTES) {
                return List.of();
            }
            return lines(new String(Files.readAllBytes(path), StandardCharsets.UTF_8));
        } catch (IOException | InvalidPathException gone) {
            return List.of(); // the problem itself has been told; only its line cannot be shown
        }
    }

    private static List<String> lines(String text) {
        String whole = text.startsWith("\ufeff") ? text.substring(1) : text;
        return List.of(whole.replace("\r\n", "\n").replace('\r', '\n').split("\n", -1));
    }
}
