package cuelead.cli;

import cuelead.document.DocumentFile;
import cuelead.document.DocumentText;
import cuelead.report.Refused;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The lines of the files that problems are about, read again to be shown. */
final class SourceLines {
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
            return DocumentFile.read(Path.of(file)).lines().stream()
                    .map(DocumentText.Line::text)
                    .toList();
        } catch (Refused | InvalidPathException gone) {
            return List.of(); // the problem itself has been told; only its line cannot be shown
        }
    }
}
