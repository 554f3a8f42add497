package cuelead.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Headings with a number and no word for it: "1) Vines", "2. ROCKS", "#3", each with lines of counts below it. */
final class NumberedHeadings implements Manner {
    private static final Pattern NUMBER = Pattern.compile(
            "^\\W*?(?:no|nr|number)?\\.?\\s*[#(]?(\\d{1,2})\\s*(?:[.):]\\s*|-\\s+|\\s+(?=[A-Z]{2})|$)(?=\\D|$)");
    private static final int SHORTEST = 2;

    @Override
    public List<SheetLine> usual(List<SheetLine> lines) {
        List<SheetLine> usual = new ArrayList<>();
        int last = 0;
        for (int i = 0; i < lines.size(); i++) {
            SheetLine line = lines.get(i);
            Matcher number = NUMBER.matcher(line.text());
            boolean heads = number.find()
                    && Integer.parseInt(number.group(1)) == last + 1
                    && below(lines, i).filter(NumberedHeadings::opens).isPresent();
            last += heads ? 1 : 0;
            usual.add(heads ? line.with(0, number.end(), "Section " + last + ": ") : line);
        }
        return last < SHORTEST ? lines : usual;
    }

    private static Optional<SheetLine> below(List<SheetLine> lines, int i) {
        return lines.stream().skip(i + 1L).filter(line -> !line.isBlank()).findFirst();
    }

    /** Several counts, the first of which begins a section. */
    private static boolean opens(SheetLine line) {
        List<CountPlaces.Counted> counted = line.counted(0);
        if (counted.isEmpty()) {
            return false;
        }
        int first = counted.get(0).group().counts().get(0).number();
        return first <= 1 || (first % 2 == 1 && counted.get(0).group().counts().size() > 1);
    }
}
