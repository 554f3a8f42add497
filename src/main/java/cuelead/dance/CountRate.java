package cuelead.dance;

/** How many counts of the dance go on one beat of the song: 1, 2, or 1/2. */
public enum CountRate {
    ONE("1", 2),
    TWO("2", 4),
    HALF("1/2", 1);

    private final String label;
    private final int countsInTwoBeats;

    CountRate(String label, int countsInTwoBeats) {
        this.label = label;
        this.countsInTwoBeats = countsInTwoBeats;
    }

    public String label() {
        return label;
    }

    /** Counts danced in two beats, a whole number: 2, 4, or 1. */
    public int countsInTwoBeats() {
        return countsInTwoBeats;
    }
}
