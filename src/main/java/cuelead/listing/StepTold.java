package cuelead.listing;

import cuelead.dance.Step;
import cuelead.dance.Weight;

/** A step in the words of a table. */
public final class StepTold {
    private StepTold() {}

    /** {@code step forward}, {@code touch together}. */
    public static String what(Step step) {
        String action =
                switch (step.action()) {
                    case INPLACE -> "step in place";
                    case HIPROLL -> "hip roll";
                    case STOMPUP -> "stomp up";
                    default -> step.action().word().replace('-', ' ');
                };
        String direction =
                switch (step.direction()) {
                    case NONE, TURN, PLACE, CONT -> "";
                    case FWD -> "forward";
                    case FWD_ACROSS -> "forward across";
                    case FWD_CENTRE -> "forward to centre";
                    case BACK_CENTRE -> "back to centre";
                    case FWD_DIAG -> "forward diagonal";
                    case BACK_DIAG -> "back diagonal";
                    default -> step.direction().word().replace('-', ' ');
                };
        return direction.isEmpty() || direction.equals(action) ? action : action + " " + direction;
    }

    /** Which foot bears it; {@code open} where the sheet does not tell. */
    public static String weight(Weight weight) {
        return switch (weight) {
            case LEFT -> "left";
            case RIGHT -> "right";
            case BOTH -> "both";
            case UNKNOWN -> "open";
        };
    }
}
