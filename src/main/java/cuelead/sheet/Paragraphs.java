package cuelead.sheet;

import java.util.ArrayList;
import java.util.List;

/** Running prose: the lines of a paragraph are one line, whose sentences are lines. */
final class Paragraphs implements Manner {
    @Override
    public List<SheetLine> usual(List<SheetLine> lines) {
        List<SheetLine> usual = new ArrayList<>();
        boolean apart = true;
        boolean begun = false;
        for (SheetLine line : lines) {
            boolean goesOn = !apart && !line.isBlank() && LineKind.of(line) == LineKind.OTHER;
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

    private static boolean mayGoOn(SheetLine line) {
        LineKind kind = LineKind.of(line);
        boolean steps = (kind == LineKind.OTHER || kind == LineKind.COUNTS) && DanceLine.mayBeDanced(line);
        return steps && !HeaderReader.isFact(line);
    }
}
