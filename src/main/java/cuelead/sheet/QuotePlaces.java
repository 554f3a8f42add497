package cuelead.sheet;

import java.util.ArrayList;
import java.util.List;

/** Where in a sheet the quotes with the calls of a step may stand: most likely first. */
final class QuotePlaces {
    /** A line of steps seldom goes on for longer. */
    private static final int LINES = 4;

    /** Each is tried by reading the sheet. */
    private static final int MOST_SPOTS = 16;

    private static final String BEFORE_QUOTES = "  ";

    private final String text;
    private final List<Integer> starts = new ArrayList<>();
    private final List<Spot> spots = new ArrayList<>();

    private QuotePlaces(String text) {
        this.text = text;
        int start = 0;
        while (start >= 0) {
            starts.add(start);
            int end = text.indexOf('\n', start);
            start = end < 0 ? -1 : end + 1;
        }
    }

    /**
     * A place in the text.
     *
     * @param from  0-based
     * @param to    behind the last character that is there now; {@code from} where there are no quotes yet
     * @param calls how many are there now
     */
    record Spot(int from, int to, int calls) {
        /** The text with these quotes there; without any, where they are empty. */
        String with(String text, String quotes) {
            if (!quotes.isEmpty()) {
                return text.substring(0, from) + (from == to ? BEFORE_QUOTES : "") + quotes + text.substring(to);
            }
            int end = from;
            while (from < to && end > 0 && Scanner.isSpace(text.charAt(end - 1)) && text.charAt(end - 1) != '\n') {
                end--;
            }
            return text.substring(0, end) + text.substring(to);
        }
    }

    /** Those for a step; line and column are where it is written, from 1. */
    static List<Spot> of(String text, int line, int column) {
        QuotePlaces places = new QuotePlaces(text);
        int last = Math.min(places.starts.size(), line + LINES - 1);
        for (int at = Math.max(1, line); at <= last; at++) {
            places.addQuotes(at, at == line ? column : 1);
        }
        for (int at = Math.max(1, line); at <= last; at++) {
            places.spots.add(places.empty(places.endOf(at)));
        }
        if (line >= 1 && line <= last) {
            places.addGaps(line, column);
        }
        return List.copyOf(places.spots);
    }

    private int startOf(int line) {
        return starts.get(line - 1);
    }

    /** Behind its last character that is no space. */
    private int endOf(int line) {
        int end = line < starts.size() ? starts.get(line) - 1 : text.length();
        while (end > startOf(line) && Scanner.isSpace(text.charAt(end - 1))) {
            end--;
        }
        return end;
    }

    private Spot empty(int at) {
        return new Spot(at, at, 0);
    }

    private void addQuotes(int line, int column) {
        int end = endOf(line);
        int from = startOf(line);
        while (from < end) {
            int to = from + 1;
            if (Scanner.isQuote(text.charAt(from))) {
                while (to < end && !Scanner.isQuote(text.charAt(to))) {
                    to++;
                }
                if (to < end && from >= startOf(line) + column - 1) {
                    int calls = text.substring(from + 1, to).split(",", -1).length;
                    spots.add(new Spot(from, to + 1, calls));
                }
                to++;
            }
            from = to;
        }
    }

    /** Between the words of a line that holds several groups of counts. */
    private void addGaps(int line, int column) {
        int end = endOf(line);
        for (int at = startOf(line) + Math.max(1, column); at < end && spots.size() < MOST_SPOTS; at++) {
            if (Scanner.isSpace(text.charAt(at)) && !Scanner.isSpace(text.charAt(at - 1))) {
                spots.add(empty(at));
            }
        }
    }
}
