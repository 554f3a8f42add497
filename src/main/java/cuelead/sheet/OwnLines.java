package cuelead.sheet;

import cuelead.dance.CountOne;
import cuelead.dance.CountRate;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Reads Cuelead's own lines, wherever in the sheet they stand: {@code Song: file}, {@code Count 1: seconds},
 * {@code Lead: beats}, {@code Counts a beat: 1, 2 or 1/2}.
 */
final class OwnLines {
    private static final int LATEST_SECONDS = 36_000;
    private static final int LONGEST_KEY = 40;
    private static final Pattern SPACES = Pattern.compile("\\s+");
    private static final Set<String> SECONDS = Set.of("s", "sec", "secs", "second", "seconds");

    private final Problems problems;
    private final Set<String> seen = new HashSet<>();
    private String song = "";
    private Optional<CountOne> countOne = Optional.empty();
    private OptionalDouble leadBeats = OptionalDouble.empty();
    private CountRate rate = CountRate.ONE;

    OwnLines(Problems problems) {
        this.problems = problems;
    }

    /** Whether the line is one of these. */
    static boolean isOwn(SheetLine line) {
        String key = key(line);
        if (key.equals("count 1")) {
            String value = line.text().substring(line.text().indexOf(':') + 1);
            return !value.isBlank() && !DanceLine.isDanced(value);
        }
        return key.equals("song")
                ? namesFile(line)
                : Set.of("lead", "counts a beat").contains(key);
    }

    /** "Song: Kettle Song by Aunt Minna" is a credit, and no file. */
    private static boolean namesFile(SheetLine line) {
        String value = line.text().substring(line.text().indexOf(':') + 1).strip();
        return value.isEmpty() || FILE.matcher(value).find();
    }

    private static final Pattern FILE = Pattern.compile("\\.[A-Za-z0-9]{2,5}$|[/\\\\]");

    /** What stands before the colon; empty without one. */
    private static String key(SheetLine line) {
        int colon = line.text().indexOf(':');
        return colon < 0 || colon > LONGEST_KEY
                ? ""
                : SPACES.matcher(line.text().substring(0, colon).strip())
                        .replaceAll(" ")
                        .toLowerCase(Locale.ROOT);
    }

    /** Takes the line where it is one of these; false where it is not. */
    boolean read(SheetLine line) {
        if (!isOwn(line)) {
            return false;
        }
        String key = key(line);
        int colon = line.text().indexOf(':');
        String value = line.text().substring(colon + 1).strip();
        switch (key) {
            case "song" -> song(line, value);
            case "count 1" -> countOne(line, value);
            case "lead" -> lead(line, value);
            case "counts a beat" -> rate(line, value);
            default -> {
                return false;
            }
        }
        if (!seen.add(key)) {
            problems.warning(
                    "header_twice",
                    line.number(),
                    line.firstColumn(),
                    "\"" + line.text().substring(0, colon).strip() + "\" stands more than once; the last one counts.",
                    "Delete all but one.");
        }
        return true;
    }

    private void song(SheetLine line, String value) {
        song = value;
        if (value.isEmpty()) {
            bad(line, "No song is named behind \"Song:\".", "Write the song's file, such as \"Song: my-song.mp3\".");
        }
    }

    private void countOne(SheetLine line, String value) {
        OptionalDouble seconds = seconds(value);
        if (seconds.isEmpty() || seconds.getAsDouble() > LATEST_SECONDS) {
            bad(
                    line,
                    "\"Count 1\" needs a time in seconds from the song's start, not \"" + shown(value) + "\".",
                    "Write it like \"Count 1: 7.46\".");
        } else {
            countOne = Optional.of(new CountOne.AtSeconds(seconds.getAsDouble()));
        }
    }

    /** {@code 7.46}, {@code 7.46 s} or, with minutes, {@code 0:07.46}. */
    private static OptionalDouble seconds(String value) {
        int colon = value.indexOf(':');
        String minutes = value.substring(0, Math.max(0, colon)).strip();
        String rest = value.substring(colon + 1).strip();
        OptionalDouble seconds = decimal(rest, SECONDS);
        if (colon < 0 || seconds.isEmpty()) {
            return seconds;
        }
        boolean whole =
                !minutes.isEmpty() && minutes.length() <= 3 && minutes.chars().allMatch(c -> c >= '0' && c <= '9');
        boolean withinMinute = seconds.getAsDouble() < 60 && Scanner.isDigit(rest.charAt(0));
        return whole && withinMinute
                ? OptionalDouble.of(Integer.parseInt(minutes) * 60 + seconds.getAsDouble())
                : OptionalDouble.empty();
    }

    private void lead(SheetLine line, String value) {
        OptionalDouble beats = decimal(value, Set.of("beat", "beats"));
        if (beats.isEmpty() || beats.getAsDouble() < 0.5 || beats.getAsDouble() > 16) {
            bad(
                    line,
                    "\"Lead\" needs a number of beats from 0.5 to 16, not \"" + shown(value) + "\".",
                    "Usual is \"Lead: 2\".");
        } else {
            leadBeats = beats;
        }
    }

    private void rate(SheetLine line, String value) {
        String figures = value.equals("\u00bd") ? "1/2" : value;
        Optional<CountRate> found = List.of(CountRate.values()).stream()
                .filter(candidate -> candidate.label().equals(figures))
                .findFirst();
        found.ifPresent(known -> rate = known);
        if (found.isEmpty()) {
            bad(
                    line,
                    "\"Counts a beat\" is 1, 2 or 1/2, not \"" + shown(value) + "\".",
                    "Usual is \"Counts a beat: 1\".");
        }
    }

    /** A number of at most nine figures with a point or comma, alone or before its unit; no sign. */
    private static OptionalDouble decimal(String value, Set<String> units) {
        int end = 0;
        int points = 0;
        while (end < value.length() && (Scanner.isDigit(value.charAt(end)) || ".,".indexOf(value.charAt(end)) >= 0)) {
            points += Scanner.isDigit(value.charAt(end)) ? 0 : 1;
            end++;
        }
        String unit = value.substring(end).strip().toLowerCase(Locale.ROOT);
        boolean known = unit.isEmpty() || units.contains(unit);
        if (end == points || end > 10 || points > 1 || !known) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(Double.parseDouble(value.substring(0, end).replace(',', '.')));
    }

    private static String shown(String value) {
        return value.length() <= LONGEST_KEY ? value : value.substring(0, LONGEST_KEY) + "...";
    }

    /** Points at the value behind the colon. */
    private void bad(SheetLine line, String sentence, String tryThis) {
        int value = line.text().indexOf(':') + 1;
        while (value < line.text().length() && Scanner.isSpace(line.text().charAt(value))) {
            value++;
        }
        problems.error("bad_header", line.number(), value + 1, sentence, tryThis);
    }

    String song() {
        return song;
    }

    Optional<CountOne> countOne() {
        return countOne;
    }

    OptionalDouble leadBeats() {
        return leadBeats;
    }

    CountRate rate() {
        return rate;
    }
}
