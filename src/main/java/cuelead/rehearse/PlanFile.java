package cuelead.rehearse;

import cuelead.report.Refused;
import cuelead.report.UserText;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * A call plan as comma-separated values with a header line. It must have the columns {@code word} and {@code time};
 * {@code beat}, {@code lead_beats}, {@code wall} and {@code section} may be missing, and any others are left alone.
 */
public final class PlanFile {
    private static final List<String> COUNTED = List.of("wall", "lead_beats");

    private final Path file;
    private final List<String> columns;
    private final List<String> lines;

    private PlanFile(Path file, List<String> lines) {
        this.file = file;
        this.lines = lines;
        columns = lines.isEmpty() ? List.of() : CsvRow.values(lines.get(0).toLowerCase(Locale.ROOT));
    }

    /**
     * The calls in order of time.
     *
     * @throws Refused when the file cannot be read, or a column or number in it
     */
    public static List<PlannedCall> read(Path file) throws Refused {
        String text = UserText.read(file, "The plan");
        return new PlanFile(file, text.lines().toList()).calls();
    }

    private List<PlannedCall> calls() throws Refused {
        int word = column("word");
        int time = column("time");
        int beat = columns.indexOf("beat");
        int lead = columns.indexOf("lead_beats");
        int wall = columns.indexOf("wall");
        int section = columns.indexOf("section");
        List<PlannedCall> calls = new ArrayList<>();
        for (int i = 1; i < lines.size(); i++) {
            if (lines.get(i).isBlank()) {
                continue;
            }
            List<String> values = CsvRow.values(lines.get(i));
            String beatText = value(values, beat);
            String wallText = value(values, wall);
            String leadText = value(values, lead);
            calls.add(PlannedCall.of(
                    word(value(values, word), i),
                    number(value(values, time), "time", i),
                    beatText.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(number(beatText, "beat", i)),
                    leadText.isEmpty() ? 0 : number(leadText, "lead_beats", i),
                    wallText.isEmpty() ? 0 : (int) number(wallText, "wall", i),
                    value(values, section)));
        }
        if (calls.isEmpty()) {
            throw new Refused("The plan " + file + " has no calls: below its header line there must be a line a call.");
        }
        calls.sort(Comparator.comparingDouble(PlannedCall::seconds));
        return BeatLengths.filled(calls);
    }

    private int column(String name) throws Refused {
        int at = columns.indexOf(name);
        if (at < 0) {
            throw new Refused(file + ":1:1: the plan has no column \"" + name
                    + "\"; its first line must name its columns, such as word,time,beat"
                    + " (\"cuelead plan my-sheet.txt my-song.mp3 --csv\" writes one).");
        }
        return at;
    }

    private static String value(List<String> values, int column) {
        return column >= 0 && column < values.size() ? values.get(column) : "";
    }

    private String word(String word, int line) throws Refused {
        if (word.isEmpty()) {
            throw new Refused(file + ":" + (line + 1) + ":1: this line has no word; write what is called.");
        }
        return word;
    }

    private double number(String text, String column, int line) throws Refused {
        try {
            double number = Double.parseDouble(text);
            if (Double.isFinite(number) && number >= 0) {
                return number;
            }
        } catch (NumberFormatException noNumber) {
            // told below, as for a number that cannot be
        }
        throw new Refused(file + ":" + (line + 1) + ":" + (columns.indexOf(column) + 1) + ": \"" + text + "\" is no "
                + column + "; write " + (COUNTED.contains(column) ? "a number, such as 2." : "seconds, such as 12.5."));
    }
}
