package cuelead.compose;

import cuelead.time.Tempo;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the lines at the head of a score. What is missing or wrong gets a default, so that reading goes on. */
final class HeaderReader {
    private static final List<String> KEYS =
            List.of("title", "metre", "tempo", "drift", "key", "seed", "swing", "human");
    private static final Pattern NUMBER = Pattern.compile("(\\d+(?:\\.\\d+)?) ?(%|ms|)");

    private final Complaints complaints;
    private String title = "";
    private int beatsPerBar = 4;
    private double tempo = 100;
    private double driftPercent;
    private Key key = new Key(0, Key.Mode.MAJOR);
    private double seed = 1;
    private double swingPercent = 50;
    private double humanMilliseconds;

    HeaderReader(Complaints complaints) {
        this.complaints = complaints;
    }

    Score.Header read(List<ScoreReader.Entry> entries) {
        entries.forEach(this::readEntry);
        for (String needed : List.of("title", "metre", "tempo", "key")) {
            if (entries.stream().noneMatch(entry -> entry.key().text().equals(needed))) {
                complaints.atFile(
                        "missing_" + needed,
                        "The score does not say its " + needed + ".",
                        "Add a line \"" + needed + ": ...\" at its head.");
            }
        }
        return new Score.Header(
                title,
                beatsPerBar,
                new Tempo(tempo),
                driftPercent / 100,
                key,
                (long) seed,
                swingPercent / 100,
                humanMilliseconds / 1000);
    }

    private void readEntry(ScoreReader.Entry entry) {
        switch (entry.key().text()) {
            case "title" -> title = entry.text();
            case "metre" -> readMetre(entry);
            case "tempo" -> tempo = number(entry, "", 40, 240, tempo);
            case "drift" -> driftPercent = number(entry, "%", 0, 10, driftPercent);
            case "key" -> readKey(entry);
            case "seed" -> seed = number(entry, "", 0, 1_000_000, seed);
            case "swing" -> swingPercent = number(entry, "%", 50, 75, swingPercent);
            case "human" -> humanMilliseconds = number(entry, "ms", 0, 20, humanMilliseconds);
            default -> complaints.unknown(entry.key(), "head line", KEYS);
        }
    }

    private void readMetre(ScoreReader.Entry entry) {
        switch (entry.text()) {
            case "4/4" -> beatsPerBar = 4;
            case "3/4" -> beatsPerBar = 3;
            default ->
                complaints.at(entry.place(), "bad_metre", "The metre must be 4/4 or 3/4.", "Write \"metre: 4/4\".");
        }
    }

    private void readKey(ScoreReader.Entry entry) {
        Optional<Key> read = Key.parse(entry.text());
        if (read.isEmpty()) {
            complaints.at(
                    entry.place(),
                    "bad_key",
                    "\"" + entry.text() + "\" is not a key.",
                    "Write for example \"key: G major\".");
        }
        key = read.orElse(key);
    }

    private double number(ScoreReader.Entry entry, String unit, double least, double most, double otherwise) {
        Matcher matcher = NUMBER.matcher(entry.text());
        boolean fits = matcher.matches()
                && (matcher.group(2).equals(unit) || matcher.group(2).isEmpty());
        double value = fits ? Double.parseDouble(matcher.group(1)) : Double.NaN;
        if (!(value >= least && value <= most)) {
            complaints.at(
                    entry.place(),
                    "bad_number",
                    "\"" + entry.text() + "\" is no " + entry.key().text() + " from " + plain(least) + " to "
                            + plain(most) + (unit.isEmpty() ? "" : " " + unit) + ".",
                    "");
            return otherwise;
        }
        return value;
    }

    private static String plain(double whole) {
        return Long.toString((long) whole);
    }
}
