package cuelead.sheet;

import cuelead.dance.Action;
import cuelead.dance.Direction;
import cuelead.dance.Figure;
import cuelead.dance.FigureRow;
import java.util.List;
import java.util.Set;

/** Figures of the table that go forward, danced another way: "toe strut back", "back lock step", "shuffle diagonally". */
final class FigureWays {
    private FigureWays() {}

    static FigureRow danced(FigureRow row, Set<String> places) {
        boolean forward = row.travel().equals("fwd")
                && row.figure().pattern().get(0).direction() == Direction.FWD
                && row.netTurn().isNone();
        if (!forward || places.isEmpty()) {
            return row;
        }
        List<Figure.Beat> pattern =
                row.figure().pattern().stream().map(beat -> beat(beat, places)).toList();
        return row.with(row.figure().withPattern(pattern));
    }

    private static Figure.Beat beat(Figure.Beat beat, Set<String> places) {
        Direction direction = beat.direction();
        if (direction == Direction.FWD && beat.action() != Action.SCUFF && beat.action() != Action.BRUSH) {
            direction = way(places);
        } else if (beat.action() == Action.LOCK && places.contains("back")) {
            direction = Direction.OVER;
        }
        return new Figure.Beat(beat.offset(), beat.foot(), beat.action(), direction, beat.turn(), beat.transfer());
    }

    private static Direction way(Set<String> places) {
        boolean back = places.contains("back");
        if (places.contains("diag")) {
            return back ? Direction.BACK_DIAG : Direction.FWD_DIAG;
        }
        if (places.contains("over")) {
            return Direction.OVER;
        }
        return back ? Direction.BACK : places.contains("side") ? Direction.SIDE : Direction.FWD;
    }
}
