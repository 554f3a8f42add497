package cuelead.rehearse;

import java.util.ArrayList;
import java.util.List;

/** Takes a line of comma-separated values apart (RFC 4180, "Common format and MIME type for CSV files", without line ends in values). */
final class CsvRow {
    private CsvRow() {}

    /** The values of one line, without their quotes. */
    static List<String> values(String line) {
        List<String> values = new ArrayList<>();
        StringBuilder value = new StringBuilder();
        boolean isQuoted = false;
        for (int i = 0; i < line.length(); i++) {
            char letter = line.charAt(i);
            boolean isDoubled = isQuoted && letter == '"' && i + 1 < line.length() && line.charAt(i + 1) == '"';
            if (isDoubled) {
                value.append('"');
                i++;
            } else if (letter == '"') {
                isQuoted = !isQuoted;
            } else if (letter == ',' && !isQuoted) {
                values.add(value.toString().strip());
                value.setLength(0);
            } else {
                value.append(letter);
            }
        }
        values.add(value.toString().strip());
        return values;
    }
}
