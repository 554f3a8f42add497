package cuelead.sheet;

import java.util.List;

/**
 * A way in which authors write counts, such as in words or without spaces between them: puts the lines of a sheet that
 * may be written so into the usual way.
 */
interface Manner {
    /** The same list where no line is written so. */
    List<SheetLine> usual(List<SheetLine> lines);

    /** Both, this one first. */
    default Manner then(Manner next) {
        return lines -> next.usual(usual(lines));
    }
}
