package cuelead.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A crib of which every numbered or lettered line is a section with its steps behind the number: "1) vine R (1-4), vine L
 * (5-8)", "2. rock, recover (2), shuffle back (2), ...", "c) two jazz boxes".
 */
final class NumberedSteps implements Manner {
    private static final Pattern ITEM = Pattern.compile(
            "^\\W*?(?:(?:no|nr|number|line|row)\\b\\.?\\s*)?#?[(\\[]?(\\d{1,2}|[a-z](?=\\s*[.):\\]-]))"
                    + "\\s*(?:[.):\\]=]+|-(?=\\s)|\\s(?=\\s*\\D))\\s*(?=\\S)",
            Pattern.CASE_INSENSITIVE);
    private static final int FEWEST = 2;
    /** Counts of a section: an eight, or a six in waltz; twice as many where the author writes long lines. */
    private static final List<Integer> LENGTHS = List.of(8, 6, 16, 12);

    @Override
    public List<SheetLine> usual(List<SheetLine> lines) {
        Items items = new Items(lines);
        return items.number < FEWEST || items.sections * 3 < items.number * 2 ? lines : items.usual;
    }

    /** Where every item is counted from the first count of a section, its number is no count whatever else it may be. */
    static List<SheetLine> counted(List<SheetLine> lines) {
        Items items = new Items(lines);
        return items.number < FEWEST || items.counted < items.number ? lines : items.usual;
    }

    /** The lines with their items as sections. */
    private static final class Items {
        private final List<SheetLine> usual = new ArrayList<>();
        private int number;
        private int sections;
        private int counted;

        Items(List<SheetLine> lines) {
            for (SheetLine line : lines) {
                Optional<Integer> steps = steps(line, number + 1);
                steps.map(from -> line.text().substring(from)).ifPresent(this::item);
                String head = "Section " + number + ": ";
                usual.add(steps.map(from -> line.with(0, from, head)).orElse(line));
            }
        }

        private void item(String steps) {
            number++;
            boolean section = isSection(steps);
            sections += section ? 1 : 0;
            counted += section && isCounted(CountPlaces.of(steps, 0)) ? 1 : 0;
        }
    }

    /** 0-based index where the steps of the item with this number begin; empty where the line is none. */
    private static Optional<Integer> steps(SheetLine line, int number) {
        Matcher item = ITEM.matcher(line.text());
        return item.find()
                        && number(item.group(1)) == number
                        && DanceLine.isDanced(line.text().substring(item.end()))
                ? Optional.of(item.end())
                : Optional.empty();
    }

    private static int number(String label) {
        char c = Character.toLowerCase(label.charAt(0));
        return Scanner.isDigit(c) ? Integer.parseInt(label) : c - 'a' + 1;
    }

    /** Counted from the first count of a section, or as long as one. */
    private static boolean isSection(String steps) {
        List<CountPlaces.Counted> counted = CountPlaces.of(steps, 0);
        if (isCounted(counted)) {
            int first = counted.get(0).group().counts().get(0).number();
            return first <= 1 || LENGTHS.stream().anyMatch(length -> (first - 1) % length == 0);
        }
        List<StatedLengths.Stated> lengths = StatedLengths.in(steps);
        int total = lengths.stream().mapToInt(StatedLengths.Stated::counts).sum();
        boolean running = lengths.size() > 1
                && LENGTHS.contains(lengths.get(lengths.size() - 1).counts());
        return lengths.isEmpty() ? LENGTHS.contains(usual(steps)) : LENGTHS.contains(total) || running;
    }

    private static boolean isCounted(List<CountPlaces.Counted> counted) {
        return counted.size() > 1
                || (counted.size() == 1 && counted.get(0).group().counts().size() > 1);
    }

    /** As long as its figures usually are. */
    private static int usual(String steps) {
        List<Phrase> phrases = LineFit.phrases(steps);
        return LineFit.areReadable(phrases) ? UsualCounts.length(phrases) : 0;
    }
}
