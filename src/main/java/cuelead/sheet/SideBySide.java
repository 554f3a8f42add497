package cuelead.sheet;

import java.util.List;

/** Two columns of a page beside each other: the right one is read below the left one. */
final class SideBySide implements Manner {
    @Override
    public List<SheetLine> usual(List<SheetLine> lines) {
        return lines;
    }
}
