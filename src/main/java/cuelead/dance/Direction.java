package cuelead.dance;

import java.util.Optional;

/**
 * Where an action goes, seen from the dancer, in the words of the figure table ({@code figures.tsv}).
 */
public enum Direction {
    NONE("-"),
    BACK("back"),
    BACK_CENTRE("back-centre"),
    BACK_DIAG("back-diag"),
    BACK_TO_FRONT("back-to-front"),
    BEHIND("behind"),
    CENTRE("centre"),
    CONT("cont"),
    DOWN("down"),
    FRONT_TO_BACK("front-to-back"),
    FWD("fwd"),
    FWD_ACROSS("fwd-across"),
    FWD_CENTRE("fwd-centre"),
    FWD_DIAG("fwd-diag"),
    HEEL("heel"),
    HEEL_FWD("heel-fwd"),
    HEEL_IN("heel-in"),
    HEEL_OUT("heel-out"),
    IN("in"),
    LEFT("left"),
    OUT("out"),
    OVER("over"),
    OVER_SHIN("over-shin"),
    PLACE("place"),
    RIGHT("right"),
    SIDE("side"),
    SIDE_PUSH("side-push"),
    THIRD("third"),
    TOE("toe"),
    TOE_IN("toe-in"),
    TOE_OUT("toe-out"),
    TOGETHER("together"),
    TURN("turn"),
    UP("up");

    private final String word;

    Direction(String word) {
        this.word = word;
    }

    /** The word of the trade's figure table. */
    public String word() {
        return word;
    }

    /** Left and right changed places; every other direction names no side and stays. */
    public Direction mirrored() {
        return switch (this) {
            case LEFT -> RIGHT;
            case RIGHT -> LEFT;
            default -> this;
        };
    }

    public static Optional<Direction> named(String word) {
        for (Direction candidate : values()) {
            if (candidate.word.equals(word)) {
                return Optional.of(candidate);
            }
        }
        return Optional.empty();
    }
}
