package cuelead.plan;

/** How much is called, from everything to nothing. */
public enum CallLevel {
    WORDS("words"),
    FIGURES("figures"),
    SECTIONS("sections"),
    CHANGES("changes"),
    NONE("none");

    private final String word;

    CallLevel(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    /** The next quieter level; {@link #CHANGES} is the last that a fade reaches, so that no restart is missed. */
    public CallLevel faded() {
        return switch (this) {
            case WORDS -> FIGURES;
            case FIGURES -> SECTIONS;
            case SECTIONS, CHANGES -> CHANGES;
            case NONE -> NONE;
        };
    }
}
