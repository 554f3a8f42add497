package cuelead.dance;

/** A foot, or the side that it stands on. */
public enum Foot {
    LEFT("L", "left"),
    RIGHT("R", "right");

    private final String letter;
    private final String word;

    Foot(String letter, String word) {
        this.letter = letter;
        this.word = word;
    }

    public Foot other() {
        return this == LEFT ? RIGHT : LEFT;
    }

    public String letter() {
        return letter;
    }

    public String word() {
        return word;
    }
}
