package cuelead.dance;

/** How the dance is counted: eights over bars of four, or sixes over bars of three. */
public enum Metre {
    EIGHTS(8, 4),
    SIXES(6, 3);

    private final int countsInSection;
    private final int beatsInBar;

    Metre(int countsInSection, int beatsInBar) {
        this.countsInSection = countsInSection;
        this.beatsInBar = beatsInBar;
    }

    public int countsInSection() {
        return countsInSection;
    }

    public int beatsInBar() {
        return beatsInBar;
    }
}
