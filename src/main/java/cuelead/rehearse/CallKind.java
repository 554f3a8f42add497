package cuelead.rehearse;

/** How one call landed. */
public enum CallKind {
    OK("ok"),
    EARLY("early"),
    LATE("late"),
    /** Planned and not heard. */
    MISSED("missed"),
    /** Another word than planned, at about its time. */
    WRONG("wrong"),
    /** Heard and not planned. */
    EXTRA("extra");

    /** Within so many milliseconds a call is on time; finer is not honest. */
    public static final double ON_TIME_MS = 60;

    private final String word;

    CallKind(String word) {
        this.word = word;
    }

    /** As it is written into files. */
    public String word() {
        return word;
    }

    /** Of the right word, so many milliseconds late (negative: early). */
    static CallKind ofError(double errorMs) {
        if (Math.abs(errorMs) <= ON_TIME_MS) {
            return OK;
        }
        return errorMs < 0 ? EARLY : LATE;
    }
}
