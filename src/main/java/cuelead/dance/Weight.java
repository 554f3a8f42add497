package cuelead.dance;

/** Where the weight is: on one foot, split on both, or not known. */
public enum Weight {
    LEFT("L"),
    RIGHT("R"),
    BOTH("B"),
    UNKNOWN("?");

    private final String letter;

    Weight(String letter) {
        this.letter = letter;
    }

    public static Weight on(Foot foot) {
        return foot == Foot.LEFT ? LEFT : RIGHT;
    }

    /** Whether this foot certainly bears all the weight, so that it cannot step. */
    public boolean isOn(Foot foot) {
        return this == on(foot);
    }

    public String letter() {
        return letter;
    }
}
