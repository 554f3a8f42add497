package cuelead.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Heads of tags in any wording: "There is a 4 count tag at the end of wall 3:", "Wall 3: dance this bridge", and walls
 * that are told on a line of their own below the word "TAG" or below its steps.
 */
final class TagHeads {
    private static final Set<String> NAMES = Set.of("tag", "tags", "bridge", "bridges");
    private static final Set<String> OTHERS =
            Set.of("restart", "restarts", "restarting", "ending", "finish", "sequence", "sequenced", "order", "no");
    /** Lines below the head within which the walls are told. */
    private static final int NEAR = 8;

    private final List<SheetLine> lines;

    private TagHeads(List<SheetLine> lines) {
        this.lines = new ArrayList<>(lines);
    }

    /** The same lines, heads told as such, each with its walls. */
    static List<SheetLine> told(List<SheetLine> lines) {
        TagHeads heads = new TagHeads(lines);
        for (int i = 0; i < heads.lines.size(); i++) {
            heads.line(i);
        }
        return heads.lines;
    }

    private void line(int i) {
        SheetLine line = lines.get(i);
        if (line.isBlank() || OwnLines.isOwn(line)) {
            return;
        }
        LineKind kind = LineKind.of(line);
        boolean words = kind == LineKind.OTHER || kind == LineKind.NOTE;
        if (words && has(line, NAMES) && !has(line, OTHERS) && tellsWall(line) && isDanced(i)) {
            lines.set(i, line.as(LineKind.TAG));
        } else if (kind == LineKind.TAG
                && !tellsWall(line)
                && OneLineTag.read(line).isEmpty()) {
            walls(i).ifPresent(found -> {
                lines.set(i, line.and(lines.get(found)).as(LineKind.TAG));
                lines.remove((int) found);
            });
        }
    }

    private static boolean has(SheetLine line, Set<String> words) {
        return line.tokens().stream().anyMatch(token -> token.is(Token.Kind.WORD) && words.contains(token.text()));
    }

    private static boolean tellsWall(SheetLine line) {
        return line.namesWall();
    }

    /** Whether its steps stand behind the head or directly below it. */
    private boolean isDanced(int i) {
        Optional<SheetLine> below =
                lines.stream().skip(i + 1L).filter(line -> !line.isBlank()).findFirst();
        boolean counted = below.filter(line -> !line.counted(0).isEmpty()
                        || line.fit().fits("1-4 " + line.text().strip()))
                .filter(line -> line.isDanced())
                .isPresent();
        return counted || OneLineTag.read(lines.get(i)).isPresent();
    }

    /** The line that tells of its walls and dances nothing. */
    private Optional<Integer> walls(int head) {
        for (int i = head + 1; i < Math.min(lines.size(), head + NEAR); i++) {
            SheetLine line = lines.get(i);
            LineKind kind = line.isBlank() ? LineKind.NOTE : LineKind.of(line);
            if (kind == LineKind.SECTION || kind == LineKind.TAG || kind == LineKind.REPEAT) {
                return Optional.empty();
            }
            boolean words = kind == LineKind.OTHER || kind == LineKind.NOTE;
            if (words
                    && !line.isBlank()
                    && tellsWall(line)
                    && !has(line, OTHERS)
                    && DanceLine.movesNothing(line.text())) {
                return Optional.of(i);
            }
        }
        return Optional.empty();
    }
}
