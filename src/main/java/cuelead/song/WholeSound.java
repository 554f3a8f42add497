package cuelead.song;

import cuelead.report.Problem;
import cuelead.time.SampleRate;
import java.util.List;

/** A short sound that was read whole, such as a spoken word. The array is the caller's to read, not to change. */
public final class WholeSound {
    private final SampleRate rate;
    private final float[] monoSamples;
    private final List<Problem> problems;

    WholeSound(SampleRate rate, float[] monoSamples, List<Problem> problems) {
        this.rate = rate;
        this.monoSamples = monoSamples;
        this.problems = List.copyOf(problems);
    }

    public SampleRate rate() {
        return rate;
    }

    /** The mean of all channels; full scale = 1. */
    public float[] monoSamples() {
        return monoSamples;
    }

    /** What is damaged or misnamed, a warning each. */
    public List<Problem> problems() {
        return problems;
    }
}
