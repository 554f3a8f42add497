package cuelead.rehearse;

import cuelead.report.Refused;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * How the rehearsals of one dance went over the days, and its text: a line a rehearsal, values parted by tabs.
 *
 * @param rehearsals in order of time
 */
public record Progress(List<Rehearsed> rehearsals) {
    /** What went wrong in one of so many last rehearsals is still to be learnt. */
    private static final int LAST = 3;

    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);
    private static final String BETWEEN_PLACES = "; ";
    private static final String NO_NUMBER = "-";
    private static final List<String> AFTER_KINDS = List.of("usual_ms", "steady_ms", "not_on_time");
    private static final String HEAD =
            "# How your rehearsals of this dance went, a line each. Delete lines, or the whole file, as you like.\n";

    public static final Progress NONE = new Progress(List.of());

    public Progress {
        rehearsals = List.copyOf(rehearsals);
    }

    /** The same with one more. */
    public Progress with(Rehearsed one) {
        List<Rehearsed> more = new ArrayList<>(rehearsals);
        more.add(one);
        return new Progress(more);
    }

    /** The {@link CallPlaces} of what went wrong the last times. */
    Set<String> notOnTime() {
        Set<String> places = new LinkedHashSet<>();
        rehearsals
                .subList(Math.max(0, rehearsals.size() - LAST), rehearsals.size())
                .forEach(rehearsal -> places.addAll(rehearsal.notOnTime()));
        return places;
    }

    /** As it stands in its file. */
    public String text() {
        StringBuilder text = new StringBuilder(HEAD).append("# day\t");
        for (CallKind kind : CallKind.values()) {
            text.append(kind.word()).append('\t');
        }
        text.append(String.join("\t", AFTER_KINDS)).append('\n');
        rehearsals.forEach(rehearsal -> text.append(line(rehearsal)).append('\n'));
        return text.toString();
    }

    private static String line(Rehearsed rehearsal) {
        String kinds = Arrays.stream(CallKind.values())
                .map(kind -> rehearsal.counts().getOrDefault(kind, 0L).toString())
                .collect(Collectors.joining("\t"));
        return String.join(
                "\t",
                TIME.format(rehearsal.at()),
                kinds,
                number(rehearsal.usualMs()),
                number(rehearsal.steadyMs()),
                String.join(BETWEEN_PLACES, rehearsal.notOnTime()));
    }

    private static String number(OptionalDouble ms) {
        return ms.isPresent() ? String.format(Locale.ROOT, "%.0f", ms.getAsDouble()) : NO_NUMBER;
    }

    /**
     * What a text says.
     *
     * @param file where it is from, for what is said of mistakes
     * @throws Refused when a line is none of ours, with its number
     */
    public static Progress of(String text, Path file) throws Refused {
        List<Rehearsed> rehearsals = new ArrayList<>();
        List<String> lines = text.lines().toList();
        for (int i = 0; i < lines.size(); i++) {
            if (!lines.get(i).isBlank() && !lines.get(i).startsWith("#")) {
                rehearsals.add(rehearsed(lines.get(i), file + ":" + (i + 1)));
            }
        }
        return new Progress(rehearsals);
    }

    private static Rehearsed rehearsed(String line, String where) throws Refused {
        String[] values = line.split("\t", -1);
        int kinds = CallKind.values().length;
        try {
            if (values.length == 1 + kinds + AFTER_KINDS.size()) {
                Map<CallKind, Long> counts = new EnumMap<>(CallKind.class);
                int at = 1;
                for (CallKind kind : CallKind.values()) {
                    counts.put(kind, Long.parseLong(values[at]));
                    at++;
                }
                String places = values[kinds + 3];
                return new Rehearsed(
                        LocalDateTime.parse(values[0], TIME),
                        counts,
                        number(values[kinds + 1]),
                        number(values[kinds + 2]),
                        places.isBlank() ? List.of() : List.of(places.split(BETWEEN_PLACES)));
            }
        } catch (DateTimeParseException | NumberFormatException notOurs) {
            // told below, as for a line with too few values
        }
        throw new Refused(where + ":1: this line is no rehearsal as Cuelead writes it, so nothing is added to the file;"
                + " correct the line, or delete it.");
    }

    private static OptionalDouble number(String text) {
        return text.equals(NO_NUMBER) ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(text));
    }
}
