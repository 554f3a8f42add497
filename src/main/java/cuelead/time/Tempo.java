package cuelead.time;

/** Beats a minute; more than 0 and at most 1000. Beat = 60 / tempo seconds. */
public record Tempo(double beatsPerMinute) {
    public Tempo {
        if (!(beatsPerMinute > 0 && beatsPerMinute <= 1000)) {
            throw new IllegalArgumentException("tempo out of range (0, 1000] beats a minute: " + beatsPerMinute);
        }
    }

    public double secondsPerBeat() {
        return 60 / beatsPerMinute;
    }

    public double secondsOf(Beats length) {
        return length.toDecimal() * secondsPerBeat();
    }
}
