package cuelead.sheet;

import cuelead.dance.CountOne;
import cuelead.dance.Foot;
import cuelead.dance.Header;
import cuelead.dance.Metre;
import cuelead.dance.Weight;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Reads the lines above the dance: title; counts, walls and level on one line or several; tempo; intro; where the
 * weight starts. Lines of credits are passed over.
 */
final class HeaderReader {
    private static final Set<String> LEVELS = Set.of("novice", "beginner", "improver", "intermediate", "advanced");
    private static final Set<String> LEVEL_GRADES = Set.of("absolute", "ultra", "high", "easy", "low", "phrased");

    private static final Set<String> COUNT_UNITS = Set.of("count", "counts", "beat", "beats", "ct", "cts", "c");
    private static final Set<String> SECONDS = Set.of("second", "seconds", "sec", "secs", "s");
    private static final Set<String> BARS = Set.of("bar", "bars", "measure", "measures");
    private static final int BEATS = 4;
    private static final int BEATS_OF_WALTZ = 3;
    private static final Set<String> UNITS =
            Stream.of(COUNT_UNITS, SECONDS, BARS).flatMap(Set::stream).collect(Collectors.toUnmodifiableSet());
    private static final int LONGEST_INTRO = 999;

    private static final Origins.Place NOWHERE = new Origins.Place(0, 0);

    private final Problems problems;
    private String title = "";
    private OptionalInt counts = OptionalInt.empty();
    private OptionalInt walls = OptionalInt.empty();
    private String level = "";
    private OptionalDouble tempo = OptionalDouble.empty();
    private Optional<CountOne> countOne = Optional.empty();
    private Optional<Foot> startWeight = Optional.empty();
    private boolean waltz;
    private Origins.Place countsAt = NOWHERE;
    private Origins.Place wallsAt = NOWHERE;
    private Origins.Place weightAt = NOWHERE;
    private SheetLine line = new SheetLine(0, "");

    HeaderReader(Problems problems) {
        this.problems = problems;
    }

    /** A line above the dance; what it tells of restarts and tags is no fact of the whole dance. */
    void read(SheetLine next) {
        NoteClauses.facts(next).forEach(this::facts);
    }

    private void facts(SheetLine next) {
        line = PartLengths.without(HeaderWords.usual(next));
        HeaderTokens tokens = new HeaderTokens(line.tokens());
        waltz |= tokens.holds("waltz");
        if (title.isEmpty() && !tokens.isAbout("count", "counts", "wall", "walls", "level")) {
            title = HeaderTitle.of(line.text());
            int bracket = HeaderTitle.factsFrom(line.text());
            tokens = new HeaderTokens(bracket < 0 ? List.of() : Scanner.tokens(line.text(), bracket));
        } else if (line.namesWall()) {
            return;
        }
        boolean credits = tokens.startsWith(HeaderFacts.CREDITS);
        while (!tokens.atEnd()) {
            boolean stated = !credits || tokens.isKeyHere();
            boolean taken = intro(tokens) || tempo(tokens) || (stated && fact(tokens));
            if (!taken) {
                tokens.advance();
            }
        }
        unreadFact(new HeaderTokens(line.tokens()));
        if (credits) {
            behindCredits(line).ifPresent(this::facts);
        }
    }

    /** "Choreographed by: Ann Other, 32 counts, 4 walls": facts that share the line, parted by a comma or a wide gap. */
    private static Optional<SheetLine> behindCredits(SheetLine line) {
        Matcher parted = PARTED.matcher(line.text());
        int from = parted.find() ? parted.end() : line.text().length();
        while (from < line.text().length()) {
            int to = parted.find(from) ? parted.start() : line.text().length();
            if (HeaderFacts.isFact(line.part(from, to))) {
                return Optional.of(line.part(from, line.text().length()));
            }
            from = to == line.text().length() ? to : parted.end();
        }
        return Optional.empty();
    }

    private static final Pattern NEGATIVE = Pattern.compile("^[^:]*:\\s+-\\d|^[^:]*:-\\d");
    private static final Pattern PARTED =
            Pattern.compile(",\\s|\\s{3,}(?:type:?\\s)?|\\t|\\btype:\\s", Pattern.CASE_INSENSITIVE);

    /** "Count: x", "Intro: none": a line that begins with a fact and holds no number for it. */
    private void unreadFact(HeaderTokens tokens) {
        boolean hasNumber = line.text().chars().anyMatch(c -> Scanner.isDigit((char) c));
        if (hasNumber || line.text().indexOf(':') < 0 || !tokens.isAbout("count", "counts", "intro")) {
            return;
        }
        problems.warning(
                "bad_header",
                line.number(),
                line.text().indexOf(':') + 2,
                "No number of counts is written here, so this line is not used.",
                tokens.isAbout("intro") ? "Write it like \"Intro: 16 counts\"." : "Write it like \"Count: 32\".");
    }

    private boolean fact(HeaderTokens tokens) {
        return bareCounts(tokens) || counts(tokens) || walls(tokens) || level(tokens) || weight(tokens);
    }

    /** intro := number count "intro" | "intro" number [count | second] */
    private boolean intro(HeaderTokens tokens) {
        OptionalInt number = tokens.numberThen(COUNT_UNITS, "intro");
        Optional<Token> unit = Optional.empty();
        if (number.isEmpty()) {
            number = tokens.wordThenNumber(Set.of("intro", "introduction", "wait", "after"));
            unit = number.isPresent() ? tokens.takeUnitHere(UNITS) : unit;
        }
        OptionalInt first = number.isPresent() ? OptionalInt.empty() : tokens.startOnCount();
        if (first.isPresent() && countOne.isEmpty()) {
            countOne = Optional.of(new CountOne.Intro(Math.max(0, first.getAsInt() - 1)));
            return true;
        }
        if (number.isPresent() && countOne.isEmpty()) {
            countOne(number.getAsInt(), unit);
        }
        return number.isPresent();
    }

    private void countOne(int number, Optional<Token> unit) {
        String word = unit.map(Token::text).orElse("counts");
        if (NEGATIVE.matcher(line.text()).find()) { // "Intro:- 16" is a way to write a colon
            bad(
                    line.text().indexOf('-') + 1,
                    "An intro has no negative length.",
                    "Write it like \"Intro: 16 counts\".");
        } else if (SECONDS.contains(word)) {
            countOne = Optional.of(new CountOne.AtSeconds(number));
        } else if (BARS.contains(word)) {
            countOne = Optional.of(new CountOne.Intro(number * (waltz ? BEATS_OF_WALTZ : BEATS)));
        } else if (COUNT_UNITS.contains(word) && number <= LONGEST_INTRO) {
            countOne = Optional.of(new CountOne.Intro(number));
        } else {
            String told = COUNT_UNITS.contains(word) ? "at most " + LONGEST_INTRO + " of them" : "not in " + word;
            bad(
                    unit.map(Token::column).orElse(line.firstColumn()),
                    "An intro is told in counts, " + told + ".",
                    "Write it like \"Intro: 16 counts\".");
        }
    }

    private boolean tempo(HeaderTokens tokens) {
        OptionalInt number = tokens.numberAround(Set.of("bpm"));
        if (number.isPresent() && tempo.isEmpty()) {
            double value = number.getAsInt();
            if (value < 30 || value > 300) {
                bad(
                        line.firstColumn(),
                        "A tempo of " + number.getAsInt() + " beats a minute cannot be danced.",
                        "Write 30 to 300.");
            } else {
                tempo = OptionalDouble.of(value);
            }
        }
        return number.isPresent();
    }

    /** "64 / 4w / advanced": a line of facts that begins with a number alone. */
    private boolean bareCounts(HeaderTokens tokens) {
        OptionalInt number = counts.isEmpty() ? tokens.bareNumberFirst() : OptionalInt.empty();
        if (number.isPresent()) {
            counts = number;
            countsAt = line.at(tokens.taken() - 1);
        }
        return number.isPresent();
    }

    private boolean counts(HeaderTokens tokens) {
        boolean walls = tokens.holds("wall") || tokens.holds("walls");
        OptionalInt number = tokens.numberBefore(walls ? Set.of("c", "beats") : Set.of("c"));
        number = number.isPresent() ? number : tokens.lengthAround(Set.of("count", "counts", "ct", "cts"));
        if (number.isPresent() && counts.isEmpty()) {
            counts = number;
            countsAt = line.at(tokens.taken() - 1);
        }
        return number.isPresent();
    }

    private boolean walls(HeaderTokens tokens) {
        OptionalInt number = tokens.numberAround(Set.of("wall", "walls", "w"));
        if (number.isPresent() && walls.isEmpty()) {
            walls = number;
            wallsAt = line.at(tokens.taken() - 1);
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

    private static final Set<String> LEADS = Stream.concat(Stream.of("lead", "leading"), HeaderTokens.STARTING.stream())
            .collect(Collectors.toUnmodifiableSet());

    /** "start with weight on left", "weight on L"; "lead with the LEFT foot" leaves the weight on the other. */
    private boolean weight(HeaderTokens tokens) {
        Optional<Foot> on = tokens.footAfter(Set.of("weight", "wt"));
        Optional<Foot> first = on.isPresent() ? Optional.empty() : tokens.footAfter(LEADS);
        Optional<Foot> found = on.or(() -> first.map(Foot::other));
        if (found.isPresent() && startWeight.isEmpty()) {
            startWeight = found;
            weightAt = line.at(tokens.taken() - 1);
        }
        return found.isPresent();
    }

    private void bad(int column, String sentence, String tryThis) {
        problems.error("bad_header", line.number(), column, sentence, tryThis);
    }

    Optional<Foot> startWeight() {
        return startWeight;
    }

    boolean saysWaltz() {
        return waltz;
    }

    /** The length that the header states. */
    OptionalInt counts() {
        return counts;
    }

    /** Where it states it, in the lines that it read; line 0 where it does not. */
    Origins.Place countsAt() {
        return countsAt;
    }

    /** Where it states it, in the lines that it read; line 0 where it does not. */
    Origins.Place wallsAt() {
        return wallsAt;
    }

    /** Where it states it, in the lines that it read; line 0 where it does not. */
    Origins.Place weightAt() {
        return weightAt;
    }

    Header header(Metre metre, Weight weight, OwnLines own) {
        return new Header(
                title,
                metre,
                counts,
                walls,
                level,
                tempo,
                own.song(),
                own.countOne().or(() -> countOne),
                own.leadBeats(),
                own.rate(),
                weight);
    }
}
