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

/** The lines of the documents that problems are about, opened again to be shown. */
final class SourceLines {
    private final Map<String, Optional<DocumentText>> documents = new HashMap<>();

    /** Documents that are open already, by the names that problems have for them. */
    SourceLines(Map<String, DocumentText> open) {
        open.forEach((name, document) -> documents.put(name, Optional.of(document)));
    }

    /**
     * A line as it is written, without its end.
     *
     * @param number 1-based
     * @return empty where there is no such line or the document cannot be opened
     */
    Optional<String> line(String file, int number) {
        List<DocumentText.Line> lines = document(file).map(DocumentText::lines).orElse(List.of());
        return number >= 1 && number <= lines.size()
                ? Optional.of(lines.get(number - 1).text())
                : Optional.empty();
    }

    /** Where the lines of a document are counted, unless an editor shows them so. */
    Optional<String> explanation(String file) {
        return document(file)
                .filter(document -> !document.isAsWritten())
                .map(document -> "Lines are counted in the" + " text of " + file + ", which \"cuelead read " + file
                        + " --text\" shows" + pages(document) + ".");
    }

    private static String pages(DocumentText document) {
        StringBuilder begins = new StringBuilder();
        for (int i = 1; i < document.lines().size(); i++) {
            int page = document.lines().get(i).page();
            if (page > document.lines().get(i - 1).page()) {
                begins.append("; page ")
                        .append(page)
                        .append(" begins with line ")
                        .append(i + 1);
            }
        }
        return begins.toString();
    }

    private Optional<DocumentText> document(String file) {
        return documents.computeIfAbsent(file, SourceLines::open);
    }

    private static Optional<DocumentText> open(String file) {
        try {
            return Optional.of(DocumentFile.read(Path.of(file)));
        } catch (Refused | InvalidPathException gone) {
            return Optional.empty(); // the problem itself has been told; only its line cannot be shown
        }
    }
}
