package cuelead.sheet;

import cuelead.dance.Action;
import cuelead.dance.Direction;
import cuelead.dance.Figure;
import cuelead.dance.Foot;
import cuelead.dance.Transfer;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Whether the steps of a figure are written out behind its name: "rocking chair, rock R forward, recover L, rock R back,
 * recover L" is danced once. The prose then wins over the table.
 */
final class WrittenOut {
    private WrittenOut() {}

    static boolean follows(List<Phrase> phrases, int index) {
        Optional<Phrase.FigureCall> call = phrases.get(index).figure();
        if (call.isEmpty() || phrases.get(index).repeats() > 1) {
            return false;
        }
        List<Figure.Beat> pattern = call.get().row().figure().pattern();
        List<Phrase.ActionCall> written = new ArrayList<>();
        for (int i = index + 1; i < phrases.size() && written.size() < pattern.size(); i++) {
            Phrase phrase = phrases.get(i);
            if (phrase.action().isEmpty() || phrase.figure().isPresent()) {
                break;
            }
            phrase.action().filter(action -> !action.isBareTurn()).ifPresent(written::add);
        }
        int open = call.get().row().freeEnding() ? 1 : 0;
        return written.size() >= 2 && written.size() >= pattern.size() - open && isSame(call.get(), pattern, written);
    }

    /** Weight on the same counts, and a first step by the foot and the way of the figure. */
    private static boolean isSame(Phrase.FigureCall call, List<Figure.Beat> pattern, List<Phrase.ActionCall> written) {
        for (int i = 0; i < written.size(); i++) {
            boolean last = i == pattern.size() - 1;
            if (!last
                    && takesWeight(pattern.get(i).transfer())
                            != takesWeight(written.get(i).transfer())) {
                return false;
            }
        }
        Action first = pattern.get(0).action();
        Optional<Foot> named = call.feet().stream().findFirst();
        boolean sameFoot = named.isEmpty()
                || written.get(0).foot().isEmpty()
                || named.equals(written.get(0).foot())
                || call.row().travelsAgainstItsLead();
        boolean sameWay = written.get(0).direction() == pattern.get(0).direction()
                || written.get(0).action() == first;
        return sameFoot && sameWay;
    }

    private static boolean takesWeight(Transfer transfer) {
        return transfer.takesWeight();
    }

    /** "Step R forward, pivot 1/2 L": the first step of the figure is written out before its name. */
    static boolean isBegun(List<Phrase> phrases, int index) {
        Phrase phrase = phrases.get(index);
        if (index == 0 || phrase.figure().isEmpty() || phrase.action().isEmpty()) {
            return false;
        }
        List<Figure.Beat> pattern = phrase.figure().get().row().figure().pattern();
        Figure.Beat first = pattern.get(0);
        return pattern.size() == 2
                && phrase.action().get().action() == pattern.get(1).action()
                && phrases.get(index - 1)
                        .action()
                        .filter(call -> call.action() == first.action()
                                && (call.direction() == first.direction() || call.direction() == Direction.PLACE))
                        .isPresent();
    }

    /** "Rock back, recover": the recover that ends a figure is written out behind it. */
    static boolean recovers(List<Phrase> phrases, int index) {
        return index + 1 < phrases.size()
                && phrases.get(index + 1)
                        .action()
                        .filter(call -> call.action() == Action.RECOVER)
                        .isPresent();
    }
}
