package cuelead.sheet;

import cuelead.dance.CountOne;
import cuelead.dance.CountRate;
import cuelead.dance.Foot;
import cuelead.dance.Header;
import cuelead.dance.Metre;
import cuelead.dance.Weight;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;

/**
 * Reads the lines above the dance: title; counts, walls and level on one line or several; tempo; intro; where the
 * weight starts; and Cuelead's own lines {@code Song}, {@code Count 1}, {@code Lead}, {@code Counts a beat}. Lines of
 * credits are passed over.
 */
final class HeaderReader {
    private static final Set<String> CREDITS = Set.of(
            "music",
            "choreographer",
            "choreographers",
            "choreographed",
            "choreo",
            "date",
            "country",
            "website",
            "email",
            "contact",
            "phone",
            "video",
            "note",
            "notes");
    private static final Set<String> LEVELS = Set.of("novice", "beginner", "improver", "intermediate", "advanced");
    private static final Set<String> LEVEL_GRADES = Set.of("absolute", "ultra", "high", "easy", "low", "phrased");

    private final Problems problems;
    private String title = "";
    private OptionalInt counts = OptionalInt.empty();
    private OptionalInt walls = OptionalInt.empty();
    private String level = "";
    private OptionalDouble tempo = OptionalDouble.empty();
    private String song = "";
    private Optional<CountOne> countOne = Optional.empty();
    private OptionalDouble lead = OptionalDouble.empty();
    private CountRate rate = CountRate.ONE;
    private Optional<Foot> startWeight = Optional.empty();
    private boolean waltz;
    private int countsLine;
    private int wallsLine;
    private int weightLine;
    private SheetLine line = new SheetLine(0, "");

    HeaderReader(Problems problems) {
        this.problems = problems;
    }

    void read(SheetLine next) {
        line = next;
        if (ownLine()) {
            return;
        }
        HeaderTokens tokens = new HeaderTokens(line.tokens());
        waltz |= tokens.holds("waltz");
        if (title.isEmpty() && !tokens.isAbout("count", "counts", "wall", "walls", "level")) {
            title = titleOf(line.text());
            return;
        }
        boolean credits = tokens.startsWith(CREDITS);
        while (!tokens.atEnd()) {
            boolean taken = intro(tokens) || tempo(tokens) || (!credits && fact(tokens));
            if (!taken) {
                tokens.advance();
            }
        }
    }

    private static String titleOf(String text) {
        String title = text.strip();
        if (title.toLowerCase(Locale.ROOT).startsWith("title:")) {
            title = title.substring("title:".length()).strip();
        }
        int bracket = title.indexOf('(');
        return bracket > 0 ? title.substring(0, bracket).strip() : title;
    }

    private boolean fact(HeaderTokens tokens) {
        return counts(tokens) || walls(tokens) || level(tokens) || weight(tokens);
    }

    /** intro := number count "intro" | "intro" number [count] */
    private boolean intro(HeaderTokens tokens) {
        OptionalInt number = tokens.numberThen(Set.of("count", "counts", "beat", "beats"), "intro");
        if (number.isEmpty()) {
            number = tokens.wordThenNumber(Set.of("intro", "introduction"));
        }
        if (number.isPresent() && countOne.isEmpty()) {
            countOne = Optional.of(new CountOne.Intro(number.getAsInt()));
        }
        return number.isPresent();
    }

    private boolean tempo(HeaderTokens tokens) {
        OptionalInt number = tokens.numberAround(Set.of("bpm"));
        if (number.isPresent() && tempo.isEmpty()) {
            double value = number.getAsInt();
            if (value < 30 || value > 300) {
                bad("A tempo of " + number.getAsInt() + " beats a minute cannot be danced.", "Write 30 to 300.");
            } else {
                tempo = OptionalDouble.of(value);
            }
        }
        return number.isPresent();
    }

    private boolean counts(HeaderTokens tokens) {
        OptionalInt number = tokens.numberAround(Set.of("count", "counts"));
        if (number.isPresent() && counts.isEmpty()) {
            counts = number;
            countsLine = line.number();
        }
        return number.isPresent();
    }

    private boolean walls(HeaderTokens tokens) {
        OptionalInt number = tokens.numberAround(Set.of("wall", "walls"));
        if (number.isPresent() && walls.isEmpty()) {
            walls = number;
            wallsLine = line.number();
        }
        return number.isPresent();
    }

    private boolean level(HeaderTokens tokens) {
        if (!level.isEmpty()) {
            return false;
        }
        Optional<String> words = tokens.levelWords(LEVEL_GRADES, LEVELS);
        words.ifPresent(found -> level = found);
        return words.isPresent();
    }

    /** "start with weight on left", "weight on L"; "lead with the LEFT foot" leaves the weight on the other. */
    private boolean weight(HeaderTokens tokens) {
        Optional<Foot> on = tokens.footAfter(Set.of("weight", "wt"));
        Optional<Foot> first = on.isPresent() ? Optional.empty() : tokens.footAfter(Set.of("lead", "leading"));
        Optional<Foot> found = on.or(() -> first.map(Foot::other));
        if (found.isPresent() && startWeight.isEmpty()) {
            startWeight = found;
            weightLine = line.number();
        }
        return found.isPresent();
    }

    private boolean ownLine() {
        int colon = line.text().indexOf(':');
        if (colon < 0) {
            return false;
        }
        String key =
                line.text().substring(0, colon).strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
        String value = line.text().substring(colon + 1).strip();
        switch (key) {
            case "song" -> song(value);
            case "count 1" -> countOne(value);
            case "lead" -> lead(value);
            case "counts a beat" -> rate(value);
            default -> {
                return false;
            }
        }
        return true;
    }

    private void song(String value) {
        song = value;
        if (value.isEmpty()) {
            bad("No song is named behind \"Song:\".", "Write the song's file, such as \"Song: my-song.mp3\".");
        }
    }

    private void countOne(String value) {
        OptionalDouble seconds = decimal(value);
        if (seconds.isEmpty() || seconds.getAsDouble() < 0 || seconds.getAsDouble() > 36_000) {
            bad("\"Count 1\" needs a time in seconds, not \"" + value + "\".", "Write it like \"Count 1: 7.46\".");
        } else {
            countOne = Optional.of(new CountOne.AtSeconds(seconds.getAsDouble()));
        }
    }

    private void lead(String value) {
        OptionalDouble beats = decimal(value);
        if (beats.isEmpty() || beats.getAsDouble() < 0.5 || beats.getAsDouble() > 16) {
            bad("\"Lead\" needs a number of beats from 0.5 to 16, not \"" + value + "\".", "Usual is \"Lead: 2\".");
        } else {
            lead = beats;
        }
    }

    private void rate(String value) {
        for (CountRate candidate : CountRate.values()) {
            if (candidate.label().equals(value)) {
                rate = candidate;
                return;
            }
        }
        bad("\"Counts a beat\" is 1, 2 or 1/2, not \"" + value + "\".", "Usual is \"Counts a beat: 1\".");
    }

    private static OptionalDouble decimal(String value) {
        try {
            double number = Double.parseDouble(value.replace(',', '.'));
            return Double.isFinite(number) ? OptionalDouble.of(number) : OptionalDouble.empty();
        } catch (NumberFormatException notNumber) {
            return OptionalDouble.empty();
        }
    }

    private void bad(String sentence, String tryThis) {
        int column = line.text().indexOf(':') + 2;
        int value = column - 1;
        while (value < line.text().length() && Scanner.isSpace(line.text().charAt(value))) {
            value++;
        }
        problems.error("bad_header", line.number(), value + 1, sentence, tryThis);
    }

    boolean hasTitle() {
        return !title.isEmpty();
    }

    Optional<Foot> startWeight() {
        return startWeight;
    }

    boolean saysWaltz() {
        return waltz;
    }

    int countsLine() {
        return countsLine;
    }

    int wallsLine() {
        return wallsLine;
    }

    int weightLine() {
        return weightLine;
    }

    Header header(Metre metre, Weight weight) {
        return new Header(title, metre, counts, walls, level, tempo, song, countOne, lead, rate, weight);
    }
}
