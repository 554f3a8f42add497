package cuelead.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Names of facts on lines of their own with their values below them: "Count:", "32", "Intro", "16 counts"; and what is
 * told of walls in a line that was broken before its facing.
 */
final class HeaderValues {
    private static final Pattern NAME = Pattern.compile(
            "\\W*(?:counts?|(?:number of )?walls?|level|intro(?:duction)?|choreograph(?:er|ers|ed by|y)|choreo|music|song"
                    + "|artist|track|tempo|bpm|starting weight|weight|rhythm|type|motion)\\s*[:=-]?\\s*",
            Pattern.CASE_INSENSITIVE);

    private HeaderValues() {}

    /** The same lines, each name with its value behind it. */
    static List<SheetLine> joined(List<SheetLine> lines) {
        List<SheetLine> joined = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            SheetLine line = lines.get(i);
            boolean named =
                    i > 0 && !OwnLines.isOwn(line) && NAME.matcher(line.text()).matches();
            boolean value = i + 1 < lines.size()
                    && !lines.get(i + 1).isBlank()
                    && !NAME.matcher(lines.get(i + 1).text()).matches();
            boolean broken = i > 0 && i + 1 < lines.size() && goesOn(line, lines.get(i + 1));
            joined.add((named && value) || broken ? line.and(lines.get(++i)) : line);
        }
        return joined;
    }

    /** "Restarts: wall 2 after 32 counts and wall 5 after 48 counts" above "(facing 12:00)": one sentence in two lines. */
    private static boolean goesOn(SheetLine line, SheetLine below) {
        if (OwnLines.isOwn(line) || below.isBlank() || OwnLines.isOwn(below) || !line.namesWall()) {
            return false;
        }
        char first = below.text().charAt(below.firstColumn() - 1);
        boolean small = first == '(' || Character.isLowerCase(first);
        boolean open = OPEN.matcher(line.text()).find();
        return (small || open)
                && tells(line)
                && tells(below)
                && !SaidFacing.in(below.tokens()).isEmpty();
    }

    private static boolean tells(SheetLine line) {
        LineKind kind = LineKind.of(line);
        boolean told = kind != LineKind.SECTION && kind != LineKind.COUNTS && kind != LineKind.REPEAT;
        return told && DanceLine.movesNothing(line.text());
    }

    private static final Pattern OPEN =
            Pattern.compile("(?:\\b(?:and|facing|after|on|at|walls?|the|of|to)|[-,&(])\\s*$", Pattern.CASE_INSENSITIVE);
}
