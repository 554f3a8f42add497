package cuelead.document;

import java.util.List;
import java.util.stream.Collectors;

/**
 * The text of a document. Lines are counted from 1 and are those that problems name.
 *
 * @param kind  what the document is
 * @param lines from top to bottom, page after page; a tab parts the cells of a table
 */
public record DocumentText(DocumentKind kind, List<Line> lines) {
    public DocumentText {
        lines = List.copyOf(lines);
    }

    /**
     * A line.
     *
     * @param text without its end
     * @param page 1-based page that it is on; 0 where the document has none
     */
    public record Line(String text, int page) {}

    static DocumentText ofOnePiece(DocumentKind kind, List<String> lines) {
        return new DocumentText(
                kind, lines.stream().map(line -> new Line(line, 0)).toList());
    }

    /** All lines, parted by line feeds. */
    public String text() {
        return lines.stream().map(Line::text).collect(Collectors.joining("\n"));
    }

    /** Whether its lines are those that an editor shows, so that their numbers need no word of explanation. */
    public boolean isAsWritten() {
        return kind == DocumentKind.PLAIN_TEXT;
    }
}
