package cuelead.sheet;

import cuelead.english.NumberWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A sheet that was dictated, without a single stop: "first eight one two step right to the side close left next to right
 * three and four shuffle forward right left right five six ...". Numbers that go on from the last ones are counts, and the
 * steps behind them go to the next counts; "first eight", "last section" are headings.
 */
final class Dictated {
    private static final int HIGHEST = 16;
    private static final List<String> NUMBERS = NumberWords.fromOneTo(HIGHEST);
    private static final int SHORTEST_WORDS = 12;
    private static final int FEWEST_PIECES = 2;
    /** Behind the fourth count, counts may begin at 1 again. */
    private static final int SHORTEST_SECTION = 4;

    private static final Pattern WORD = Pattern.compile("[\\p{L}'\u2019]+|\\d+(?:[/:.]\\d+)?|&");
    private static final Pattern STOP = Pattern.compile("[.,;:!?](?=\\s|$)");
    private static final Set<String> ORDINALS = Set.of(
            "first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "next", "last", "final");
    private static final Set<String> UNITS = Set.of("eight", "section", "set", "part", "block", "six", "bit");
    private static final Set<String> NOT_BEHIND = Set.of(
            "o'clock", "oclock", "o", "count", "counts", "beat", "beats", "wall", "walls", "time", "times", "steps",
            "minutes", "seconds", "bars");
    private static final Set<String> NOT_BEFORE =
            Set.of("wall", "walls", "section", "part", "the", "a", "for", "after", "facing", "at", "twenty", "thirty");
    private static final Set<String> AND = Set.of("and", "&", "n");

    private final SheetLine line;
    private final List<Word> words = new ArrayList<>();
    private final List<Piece> pieces = new ArrayList<>();
    private int last;
    private int sections;

    private record Word(String text, int from, int to) {}

    /** From a 0-based index on; the characters up to {@code counted} are replaced by the head. */
    private record Piece(int from, int counted, String head) {}

    /** Counts as numbers, from one word to behind another. */
    private record Run(String counts, int last, int end) {}

    private Dictated(SheetLine line, int sections) {
        this.line = line;
        this.sections = sections;
        Matcher word = WORD.matcher(line.text());
        while (word.find()) {
            words.add(
                    new Word(word.group().toLowerCase(Locale.ROOT).replace('\u2019', '\''), word.start(), word.end()));
        }
    }

    /** The same lines; what was dictated in one has a line for each of its counts. */
    static List<SheetLine> parted(List<SheetLine> lines) {
        List<SheetLine> parted = new ArrayList<>();
        int sections = 0;
        for (SheetLine line : lines) {
            Dictated dictated = new Dictated(line, sections);
            parted.addAll(dictated.parted());
            sections = dictated.sections;
        }
        return parted;
    }

    private List<SheetLine> parted() {
        if (words.size() < SHORTEST_WORDS || STOP.matcher(line.text()).find()) {
            return List.of(line);
        }
        find();
        long counted = pieces.stream().filter(piece -> !isHead(piece)).count();
        return counted >= FEWEST_PIECES || (counted > 0 && isTagged()) ? cut() : List.of(line);
    }

    private boolean isTagged() {
        return words.stream()
                .anyMatch(word -> word.text().equals("tag") || word.text().equals("bridge"));
    }

    private static boolean isHead(Piece piece) {
        return piece.head().startsWith("Section");
    }

    private void find() {
        for (int i = 0; i < words.size(); i++) {
            Optional<Run> run = run(i);
            if (isHeading(i) && run(i + 2).isPresent()) {
                sections++;
                pieces.add(new Piece(words.get(i).from(), words.get(i + 1).to(), "Section " + sections + ": "));
                last = 0;
                i++;
            } else if (run.isPresent()) {
                int end = words.get(run.get().end() - 1).to();
                pieces.add(new Piece(words.get(i).from(), end, run.get().counts() + " "));
                last = run.get().last();
                i = run.get().end() - 1;
            }
        }
    }

    private boolean isHeading(int at) {
        boolean heads = ORDINALS.contains(text(at)) && UNITS.contains(text(at + 1));
        if (heads) {
            last = 0;
        }
        return heads;
    }

    /** "one two", "three and four", "five": the next counts, or the first ones again. */
    private Optional<Run> run(int at) {
        int first = number(at);
        boolean begins = first == last + 1 || (first == 1 && last >= SHORTEST_SECTION);
        boolean headed = ORDINALS.contains(text(at - 2)) && UNITS.contains(text(at - 1));
        if (first == 0 || !begins || (NOT_BEFORE.contains(text(at - 1)) && !headed)) {
            return Optional.empty();
        }
        StringBuilder counts = new StringBuilder(String.valueOf(first));
        int number = first;
        int end = at + 1;
        boolean more = true;
        while (more) {
            int and = AND.contains(text(end)) ? 1 : 0;
            more = number(end + and) == number + 1;
            if (more) {
                number++;
                end += and + 1;
                counts.append(and > 0 ? "&" : ",").append(number);
            }
        }
        boolean alone = number == first;
        boolean steps = !alone || (last > 0 && DanceLine.isDanced(text(end) + " " + text(end + 1)));
        return steps && !NOT_BEHIND.contains(text(end))
                ? Optional.of(new Run(counts.toString(), number, end))
                : Optional.empty();
    }

    private String text(int at) {
        return at >= 0 && at < words.size() ? words.get(at).text() : "";
    }

    /** 0 where none stands. */
    private int number(int at) {
        String word = text(at);
        return word.matches("\\d{1,2}") ? Integer.parseInt(word) : NUMBERS.indexOf(word) + 1;
    }

    private List<SheetLine> cut() {
        List<SheetLine> cut = new ArrayList<>();
        if (line.firstColumn() - 1 < pieces.get(0).from()) {
            cut.add(line.part(0, pieces.get(0).from()));
        }
        for (int i = 0; i < pieces.size(); i++) {
            Piece piece = pieces.get(i);
            int end = i + 1 < pieces.size()
                    ? pieces.get(i + 1).from()
                    : line.text().length();
            cut.add(line.part(piece.from(), end).with(0, piece.counted() - piece.from(), piece.head()));
        }
        return cut;
    }
}
