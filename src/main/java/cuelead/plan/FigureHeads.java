package cuelead.plan;

import cuelead.dance.Figure;
import cuelead.dance.FigureRun;
import cuelead.dance.Turn;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What a figure is called before it begins: its side where the side is news ("right jazz box"), and how far it turns and
 * where to ("jazz box quarter right", "half shuffle left"; common practice of the trade). A foot is never named where it
 * could be taken for the side of the turn.
 */
final class FigureHeads {
    /**
     * First words of heads that need no side: these figures go forward, back or on the spot, and which foot is free
     * is known.
     */
    private static final Set<String> KNOWN_SIDE =
            Set.of("walk", "step", "waltz", "rock", "cross", "behind", "out", "and", "heels", "toes", "twist");

    private static final Set<String> AMOUNTS = Set.of("quarter", "half", "full", "three");
    private static final Set<String> OF_TURNS = Set.of("quarter", "half", "full", "three", "turn", "right", "left");

    /** Together with the loss of shorter words more than a long name costs. */
    private static final double NAME_LOSS = 3;

    private FigureHeads() {}

    /** As phrases of a call that must be made: where a turn is told without the name of its figure, much is lost. */
    static List<Phrase> needed(FigureRun run) {
        List<Phrase> phrases = Phrase.needed(of(run));
        if (turnOf(run).isNone() || phrases.size() < 2) {
            return phrases;
        }
        int last = phrases.size() - 1;
        List<Phrase> named = new ArrayList<>(phrases.subList(0, last));
        named.add(phrases.get(last).worthLess(NAME_LOSS));
        return named;
    }

    /** Fullest first. */
    static List<String> of(FigureRun run) {
        String head = run.danced().callHead();
        Turn turn = turnOf(run);
        if (!turn.isNone()) {
            return run.figure().isOwn() ? List.of(head + " " + TurnWords.side(turn), head) : turned(head, turn);
        }
        if (Phrase.namesSide(head) || KNOWN_SIDE.contains(head.split(" ")[0])) {
            return List.of(head);
        }
        return List.of(run.lead().word() + " " + head, head);
    }

    /** How far a figure turns in all; none where it does not turn, or turns both ways. */
    static Turn turnOf(FigureRun run) {
        List<Turn> turns = run.danced().pattern().stream()
                .map(Figure.Beat::turn)
                .filter(turn -> !turn.isNone())
                .toList();
        long sides = turns.stream()
                .map(turn -> Integer.signum(turn.degrees()))
                .distinct()
                .count();
        return sides == 1 ? turns.stream().reduce(Turn.NONE, Turn::plus) : Turn.NONE;
    }

    /** "Quarter monterey right" where the name begins with the amount, else "monterey half right", last "half right". */
    private static List<String> turned(String head, Turn turn) {
        String name = Arrays.stream(head.split(" "))
                .filter(word -> !OF_TURNS.contains(word))
                .collect(Collectors.joining(" "));
        String amount = TurnWords.amount(turn);
        String side = TurnWords.side(turn);
        List<String> heads = new ArrayList<>();
        if (!name.isEmpty() && turn.degrees() % 360 == 0) {
            heads.add(name + " " + side);
        } else if (!name.isEmpty() && AMOUNTS.contains(head.split(" ")[0])) {
            heads.add(amount + " " + name + " " + side);
        } else if (!name.isEmpty()) {
            heads.add(name + " " + amount + " " + side);
        }
        heads.add(amount + " " + side);
        return heads;
    }

    /** Whether the head says the figure's words one by one, as "kick ball change" does. */
    static boolean namesEachAction(Figure figure) {
        List<String> words =
                figure.callWords().stream().map(word -> word.split("/")[0]).toList();
        return words.size() > 1 && String.join(" ", words).equals(figure.callHead());
    }

    /** Whether the head is one word again and again: "walk walk" before a third "walk" would be a step too many. */
    static boolean repeatsAWord(Figure figure) {
        return namesEachAction(figure) && figure.callWords().stream().distinct().count() == 1;
    }
}
