package cuelead.sheet;

import cuelead.dance.Facing;
import cuelead.dance.Restart;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Restarts of which one place of the sheet tells the wall ("1 restart, on wall 3") and another the count ("*** Restart ***"). */
final class HalfRestarts {
    private final List<Mark> marks = new ArrayList<>();
    private final List<Wall> walls = new ArrayList<>();

    /** A place in the dance, and the line that marks it. */
    record Mark(int afterCount, SheetLine line) {}

    /** A wall, and the line that names it; a summary above the dance need not tell more. */
    private record Wall(int number, Optional<Facing> facing, SheetLine line, boolean summary) {}

    void mark(int afterCount, SheetLine line) {
        marks.add(new Mark(afterCount, line));
    }

    void wall(int number, Optional<Facing> facing, SheetLine line) {
        walls.add(new Wall(number, facing, line, false));
    }

    void headerWall(int number, Optional<Facing> facing, SheetLine line) {
        walls.add(new Wall(number, facing, line, true));
    }

    /** One mark is that of all walls; as many marks as walls belong together in their order. */
    List<Restart> matched(List<Restart> known) {
        List<Mark> placed = marksLeft(known);
        List<Wall> left = walls.stream()
                .filter(wall -> known.stream().noneMatch(restart -> restart.wall() == wall.number()))
                .toList();
        if (placed.isEmpty() || (placed.size() > 1 && placed.size() != left.size())) {
            return List.of();
        }
        List<Restart> matched = new ArrayList<>();
        for (int i = 0; i < left.size(); i++) {
            Mark mark = placed.get(placed.size() == 1 ? 0 : i);
            matched.add(new Restart(
                    left.get(i).number(),
                    mark.afterCount(),
                    left.get(i).facing(),
                    mark.line().number()));
        }
        return matched;
    }

    /** Marks of which no restart is known. */
    List<Mark> marksLeft(List<Restart> known) {
        return marks.stream()
                .filter(mark -> known.stream().noneMatch(restart -> restart.afterCount() == mark.afterCount()))
                .toList();
    }

    /** Lines that should tell the place of a restart and do not. */
    List<SheetLine> wallsLeft(List<Restart> known) {
        return walls.stream()
                .filter(wall -> !wall.summary())
                .filter(wall -> known.stream().noneMatch(restart -> restart.wall() == wall.number()))
                .map(Wall::line)
                .toList();
    }
}
