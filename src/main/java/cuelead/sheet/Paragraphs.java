package cuelead.sheet;

import java.util.ArrayList;
import java.util.List;

/** Running prose: the lines of a paragraph are one line, whose sentences are lines. */
final class Paragraphs implements Manner {
    @Override
    public List<SheetLine> usual(List<SheetLine> lines) {
        List<SheetLine> usual = new ArrayList<>();
        boolean apart = true;
        for (SheetLine line : lines) {
            boolean goesOn = !apart && !line.isBlank() && LineKind.of(line) == LineKind.OTHER;
            if (goesOn) {
                usual.add(usual.remove(usual.size() - 1).and(line));
            } else {
                usual.add(line);
            }
            apart = line.isBlank() || !mayGoOn(line);
        }
        return usual;
    }

    private static boolean mayGoOn(SheetLine line) {
        LineKind kind = LineKind.of(line);
        return (kind == LineKind.OTHER || kind == LineKind.COUNTS) && DanceLine.isDanced(line.text());
    }
}
