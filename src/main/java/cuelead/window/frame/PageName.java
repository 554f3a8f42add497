package cuelead.window.frame;

/** The pages, in the order in which a dance is made ready. Control and the number of a page turn to it. */
public enum PageName {
    DANCE("Dance"),
    SHEET("Sheet"),
    SONG("Song"),
    FLOOR("Floor"),
    WORDS("Words"),
    REHEARSE("Rehearse"),
    TRACKS("Tracks");

    private final String word;

    PageName(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
