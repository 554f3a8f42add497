package cuelead.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** One line of comma-separated values, as RFC 4180 ("Common format and MIME type for CSV files") has it. */
final class Csv {
    private static final String LINE_END = "\r\n";

    private final List<String> fields = new ArrayList<>();

    /** A whole line of texts. */
    static String line(List<String> texts) {
        Csv csv = new Csv();
        texts.forEach(csv::add);
        return csv.line();
    }

    Csv add(String text) {
        fields.add(needsQuotes(text) ? '"' + text.replace("\"", "\"\"") + '"' : text);
        return this;
    }

    Csv add(long number) {
        return add(Long.toString(number));
    }

    /** A time in seconds, to the nanosecond. */
    Csv addSeconds(double seconds) {
        return add(String.format(Locale.ROOT, "%.9f", seconds));
    }

    String line() {
        return String.join(",", fields) + LINE_END;
    }

    private static boolean needsQuotes(String text) {
        return text.chars().anyMatch(letter -> letter == ',' || letter == '"' || letter == '\r' || letter == '\n');
    }
}
