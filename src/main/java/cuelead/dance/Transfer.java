package cuelead.dance;

/** Whether an action moves the weight: fully onto its foot, not at all, onto both, or in part (samba's "a"). */
public enum Transfer {
    FULL("F"),
    NONE("N"),
    SPLIT("S"),
    PART("P");

    private final String letter;

    Transfer(String letter) {
        this.letter = letter;
    }

    /** Whether the named foot bears weight afterwards, for the order of left and right. */
    public boolean takesWeight() {
        return this == FULL || this == PART;
    }

    public String letter() {
        return letter;
    }
}
