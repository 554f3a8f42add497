package cuelead.plan;

import cuelead.dance.Facing;
import cuelead.dance.Turn;
import java.util.ArrayList;
import java.util.List;

/** How a turn is called: amount, side, then wall ("half left to the back"; common practice of the trade). */
final class TurnWords {
    private TurnWords() {}

    /**
     * What may be said for a turn, fullest first.
     *
     * @param turn   not none
     * @param facing the way faced after it
     */
    static List<String> of(Turn turn, Facing facing) {
        List<String> phrases = new ArrayList<>();
        String amountAndSide = amount(turn) + " " + side(turn);
        String wall = wall(facing);
        if (!wall.isEmpty() && turn.degrees() % 360 != 0) {
            phrases.add(amountAndSide + " to " + wall);
        }
        phrases.add(amountAndSide);
        return phrases;
    }

    static String side(Turn turn) {
        return turn.degrees() > 0 ? "right" : "left";
    }

    /** The wall faced, as it is said; empty on a diagonal. */
    static String wall(Facing facing) {
        return switch (facing.degrees()) {
            case 0 -> "the front";
            case 90 -> "three o'clock";
            case 180 -> "the back";
            case 270 -> "nine o'clock";
            default -> "";
        };
    }

    static String amount(Turn turn) {
        return switch (Math.abs(turn.degrees())) {
            case 45 -> "eighth";
            case 90 -> "quarter";
            case 135 -> "three eighths";
            case 180 -> "half";
            case 225 -> "five eighths";
            case 270 -> "three quarter";
            case 315 -> "seven eighths";
            case 360 -> "full turn";
            case 450 -> "full turn and a quarter";
            case 540 -> "full turn and a half";
            default -> "turn";
        };
    }
}
