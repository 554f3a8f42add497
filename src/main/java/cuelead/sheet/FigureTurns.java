package cuelead.sheet;

import cuelead.dance.Figure;
import cuelead.dance.Figures;
import cuelead.dance.Foot;
import cuelead.dance.Turn;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Adds the turn that a figure is called with. */
record FigureTurns(Problems problems, int line) {
    /** Turning rows of the table that do not bear the name of the row without a turn. */
    private static final Map<String, String> OTHER_SISTERS = Map.of(
            "chasse", "shuffle_quarter",
            "shuffle_fwd", "turning_shuffle_half",
            "shuffle_back", "turning_shuffle_half");

    Figure danced(Phrase.FigureCall call, Foot lead) {
        Figure base = call.row().figure();
        Figure sided = lead == base.lead() ? base : base.mirrored();
        if (call.turn().isEmpty()) {
            return sided;
        }
        Phrase.TurnCall turn = call.turn().get();
        int net = net(sided);
        if (net == 0) {
            return turning(sided, turn, lead);
        }
        Figure way = turn.side()
                        .map(turn::to)
                        .filter(wanted -> wanted.degrees() * net < 0)
                        .isPresent()
                ? sided.turnedBack()
                : sided;
        int missing = (turn.degrees() - Math.abs(net)) * Integer.signum(net(way));
        return missing == 0 ? way : withMore(way, new Turn(missing), turn);
    }

    /** More or less than the row's own turn, where it turns last. */
    private Figure withMore(Figure figure, Turn more, Phrase.TurnCall turn) {
        List<Figure.Beat> pattern = new ArrayList<>(figure.pattern());
        int at = pattern.size() - 1;
        while (pattern.get(at).turn().isNone()) {
            at--;
        }
        pattern.set(at, turned(pattern.get(at), pattern.get(at).turn().plus(more)));
        if (pattern.stream().filter(beat -> !beat.turn().isNone()).count() > 1) {
            placed(figure, turn, "the difference is read on its last turn");
        }
        return figure.withPattern(pattern);
    }

    /** A figure that is called with a turn which its row lacks: its turning sister in the table, if there is one. */
    private Figure turning(Figure sided, Phrase.TurnCall turn, Foot lead) {
        Optional<Figure> sister = Figures.standard().rows().stream()
                .filter(row -> row.figure().id().startsWith(sided.id() + "_")
                        || row.figure().id().equals(OTHER_SISTERS.get(sided.id())))
                .filter(row -> Math.abs(row.netTurn().degrees()) == turn.degrees())
                .map(row -> lead == row.figure().lead()
                        ? row.figure()
                        : row.figure().mirrored())
                .findFirst();
        if (sister.isPresent()) {
            boolean otherWay = turn.side()
                    .map(turn::to)
                    .filter(wanted -> wanted.degrees() == -net(sister.get()))
                    .isPresent();
            return otherWay ? sister.get().turnedBack() : sister.get();
        }
        Foot side = turn.side().orElse(lead);
        placed(sided, turn, "the turn is read on its first");
        return firstTurned(sided, turn.to(side));
    }

    private void placed(Figure figure, Phrase.TurnCall turn, String reading) {
        problems.note(
                "turn_placed",
                line,
                turn.column(),
                "It is not said on which count this " + figure.name() + " turns; " + reading + ".",
                "Write its steps out to say where it turns.");
    }

    private static int net(Figure figure) {
        return figure.pattern().stream().mapToInt(beat -> beat.turn().degrees()).sum();
    }

    private static Figure firstTurned(Figure figure, Turn turn) {
        List<Figure.Beat> pattern = new ArrayList<>(figure.pattern());
        pattern.set(0, turned(pattern.get(0), turn));
        return figure.withPattern(pattern);
    }

    private static Figure.Beat turned(Figure.Beat beat, Turn turn) {
        return new Figure.Beat(beat.offset(), beat.foot(), beat.action(), beat.direction(), turn, beat.transfer());
    }
}
