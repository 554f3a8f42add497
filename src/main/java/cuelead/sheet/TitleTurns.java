package cuelead.sheet;

import cuelead.dance.Figure;
import cuelead.dance.Foot;
import cuelead.dance.Turn;
import java.util.List;
import java.util.Optional;

/**
 * The turns of a figure whose steps are written out behind its name without them: "sailor step turning 1/4 L: L behind R, R
 * to side, L forward". They are danced where the figure usually turns.
 */
final class TitleTurns {
    private TitleTurns() {}

    /** One for each of the steps behind the name at this index; empty where it turns nobody, or the steps tell of turns. */
    static List<Turn> of(List<Phrase> phrases, int index) {
        Optional<Phrase.FigureCall> call = phrases.get(index).figure();
        if (call.isEmpty() || !WrittenOut.follows(phrases, index)) {
            return List.of();
        }
        int steps = call.get().row().figure().pattern().size();
        List<Phrase> written = phrases.subList(index + 1, Math.min(phrases.size(), index + 1 + steps));
        boolean told = written.stream()
                .flatMap(phrase -> phrase.action().stream())
                .anyMatch(action -> action.turn().isPresent() || action.isBareTurn());
        Optional<Foot> lead = call.get().feet().stream()
                .findFirst()
                .or(() -> written.get(0).action().flatMap(Phrase.ActionCall::foot));
        return told
                ? List.of()
                : new FigureTurns(Problems.unheard(), 0)
                                .danced(
                                        call.get(),
                                        lead.orElse(call.get().row().figure().lead()))
                                .pattern()
                                .stream()
                                .map(Figure.Beat::turn)
                                .toList();
    }
}
