package cuelead.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Running prose: the lines of a paragraph are one line, whose sentences are lines. */
final class Paragraphs implements Manner {
    @Override
    public List<SheetLine> usual(List<SheetLine> lines) {
        List<SheetLine> usual = new ArrayList<>();
        boolean apart = true;
        boolean begun = false;
        for (SheetLine line : lines) {
            boolean goesOn = !apart && !line.isBlank() && goesOn(usual.get(usual.size() - 1), line);
            if (goesOn) {
                usual.add(usual.remove(usual.size() - 1).and(line));
            } else {
                usual.add(line);
            }
            begun |= !usual.isEmpty() && !line.isBlank() && mayGoOn(line);
            apart = line.isBlank() || !begun || !mayGoOn(line);
        }
        return usual;
    }

    /** "... for counts", "5 to 6. Shuffle ...": counts that were broken go on as well as words. */
    private static boolean goesOn(SheetLine above, SheetLine line) {
        LineKind kind = LineKind.of(line);
        boolean open = OPEN.matcher(above.text()).find();
        return kind == LineKind.OTHER || (open && kind == LineKind.COUNTS);
    }

    private static final Pattern OPEN =
            Pattern.compile("(?:\\b(?:counts?|beats?|for|on|to|and|through)|[-,&+(])\\s*$", Pattern.CASE_INSENSITIVE);

    private static boolean mayGoOn(SheetLine line) {
        LineKind kind = LineKind.of(line);
        boolean steps = (kind == LineKind.OTHER || kind == LineKind.COUNTS) && DanceLine.mayBeDanced(line);
        return steps && !HeaderFacts.isHeader(line);
    }
}
