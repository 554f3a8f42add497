package cuelead.song;

import cuelead.report.Problem;
import cuelead.report.Problem.Severity;
import cuelead.time.BeatGrid;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads one beat file; goes on after a mistake, so that all are told in one go. */
final class BeatReader {
    private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d+(\\.\\d*)?|\\.\\d+)([eE][+-]?\\d{1,3})?");
    private static final Pattern FIELD = Pattern.compile("[^\\s]+");
    private static final int LEAST_BEATS = 2;
    /** A file of another kind would fill the screen. */
    private static final int MOST_PROBLEMS = 30;

    private record Field(String text, int column) {}

    private record Beat(double seconds, int inBar, int inPhrase) {}

    private final String file;
    private final List<Problem> problems = new ArrayList<>();
    private final List<String> comments = new ArrayList<>();
    private final List<Beat> beats = new ArrayList<>();
    private double lastSeconds = Double.NEGATIVE_INFINITY;
    private int lastLine;

    BeatReader(String file) {
        this.file = file;
    }

    BeatFile.Reading read(String text) {
        if (text.indexOf('\0') >= 0) {
            error(
                    "not_text",
                    0,
                    0,
                    "This is no text file, and beat files are text.",
                    "If you wrote it yourself, save it again as plain text (UTF-8).");
            return new BeatFile.Reading(Optional.empty(), comments, problems);
        }
        String[] lines = text.split("\\R", -1);
        for (int i = 0; i < lines.length && problems.size() < MOST_PROBLEMS; i++) {
            String line = i == 0 && lines[0].startsWith("\ufeff") ? lines[0].substring(1) : lines[i];
            readLine(line, i + 1);
        }
        if (problems.size() >= MOST_PROBLEMS) {
            error("too_many", 0, 0, "There are more mistakes after these.", "See that this is a beat file at all.");
        } else if (problems.isEmpty() && beats.size() < LEAST_BEATS) {
            error(
                    "too_few_beats",
                    0,
                    0,
                    "A beat file needs at least two beats, and this one has " + beats.size() + ".",
                    "Write one beat a line: its seconds, a tab, and its place in the bar.");
        }
        return new BeatFile.Reading(problems.isEmpty() ? Optional.of(grid()) : Optional.empty(), comments, problems);
    }

    private void readLine(String line, int number) {
        if (line.startsWith("#")) {
            comments.add(line.substring(1));
            return;
        }
        int comment = line.indexOf('#');
        List<Field> fields = fields(comment < 0 ? line : line.substring(0, comment));
        if (fields.isEmpty()) {
            return;
        }
        if (fields.size() == 1 || fields.size() > 3) {
            error(
                    "columns",
                    number,
                    fields.get(fields.size() - 1).column(),
                    "A beat has two or three columns, and this line has " + fields.size() + ".",
                    "Write the seconds, a tab, and the beat in the bar, as in: 7.46<TAB>1.");
        }
        Optional<Double> seconds = seconds(fields.get(0), number);
        OptionalInt inBar = fields.size() > 1 ? whole(fields.get(1), number, "beat in the bar") : OptionalInt.of(1);
        OptionalInt inPhrase =
                fields.size() > 2 ? whole(fields.get(2), number, "count in the phrase") : OptionalInt.of(0);
        if (seconds.isPresent() && inBar.isPresent() && inPhrase.isPresent()) {
            beats.add(new Beat(seconds.get(), inBar.getAsInt(), inPhrase.getAsInt()));
        }
    }

    private static List<Field> fields(String line) {
        List<Field> fields = new ArrayList<>();
        Matcher matcher = FIELD.matcher(line);
        while (matcher.find()) {
            fields.add(new Field(matcher.group(), matcher.start() + 1));
        }
        return fields;
    }

    private Optional<Double> seconds(Field field, int line) {
        if (!NUMBER.matcher(field.text()).matches()) {
            boolean hasComma = NUMBER.matcher(field.text().replace(',', '.')).matches();
            String tryThis = hasComma
                    ? "Write a point for the comma: " + field.text().replace(',', '.') + "."
                    : "Write the seconds from the song's beginning, as in 7.46.";
            error("not_a_number", line, field.column(), quoted(field) + " is not a number of seconds.", tryThis);
            return Optional.empty();
        }
        double seconds = Double.parseDouble(field.text());
        if (!(seconds > lastSeconds)) {
            error(
                    "not_rising",
                    line,
                    field.column(),
                    "The beat at " + field.text() + " s does not come after the one in line " + lastLine + ".",
                    "Put the beats in the order of their times, each time once.");
        }
        lastSeconds = seconds;
        lastLine = line;
        return Optional.of(seconds);
    }

    private OptionalInt whole(Field field, int line, String what) {
        boolean isWhole = field.text().matches("\\d{1,6}");
        int value = isWhole ? Integer.parseInt(field.text()) : 0;
        if (!isWhole) {
            error(
                    "not_a_number",
                    line,
                    field.column(),
                    quoted(field) + " is not a " + what + ".",
                    "Write a whole number; 1 is the first.");
        } else if (value == 0) {
            error("beat_zero", line, field.column(), "The " + what + " cannot be 0.", "Count from 1, the first.");
        }
        return value > 0 ? OptionalInt.of(value) : OptionalInt.empty();
    }

    private static String quoted(Field field) {
        String text = field.text();
        return "\"" + (text.length() > 20 ? text.substring(0, 20) + "..." : text) + "\"";
    }

    private void error(String kind, int line, int column, String sentence, String tryThis) {
        problems.add(new Problem(Severity.ERROR, kind, file, line, column, sentence, tryThis));
    }

    private BeatGrid grid() {
        return new BeatGrid(
                beats.stream().mapToDouble(Beat::seconds).toArray(),
                beats.stream().mapToInt(Beat::inBar).toArray(),
                beats.stream().mapToInt(Beat::inPhrase).toArray());
    }
}
