package cuelead.window.frame;

/** The pages, in the order in which a dance is made ready. Control and the number of a page turn to it. */
public enum PageName {
    DANCE(1, "Dance"),
    SHEET(2, "Sheet"),
    SONG(3, "Song"),
    FLOOR(4, "Floor"),
    WORDS(5, "Words"),
    REHEARSE(6, "Rehearse"),
    TRACKS(7, "Tracks");

    private final int number;
    private final String word;

    PageName(int number, String word) {
        this.number = number;
        this.word = word;
    }

    /** From 1. */
    public int number() {
        return number;
    }

    public String word() {
        return word;
    }
}
