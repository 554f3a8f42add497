package cuelead.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A numbered list whose numbers are no counts: "1. Vine right (8)", "2) K step", "Step 3: jazz box". */
final class ListNumbers implements Manner {
    private static final Pattern ITEM = Pattern.compile(
            "^\\W*?(?:(?:step|no|nr|number|figure|fig|move|item)\\b\\.?\\s*)?#?\\(?(\\d{1,2})\\s*(?:[.):]|-(?=\\s))\\s*(?=\\D)",
            Pattern.CASE_INSENSITIVE);
    private static final int SHORTEST = 2;

    @Override
    public List<SheetLine> usual(List<SheetLine> lines) {
        List<SheetLine> usual = new ArrayList<>();
        int last = 0;
        for (SheetLine line : lines) {
            Matcher item = ITEM.matcher(line.text());
            boolean next = item.find() && isNext(Integer.parseInt(item.group(1)), last);
            last = next ? Integer.parseInt(item.group(1)) : last;
            usual.add(next ? line.with(0, item.end(), "") : line);
        }
        return last < SHORTEST ? lines : usual;
    }

    private static boolean isNext(int number, int last) {
        return number == last + 1 || number == 1;
    }
}
