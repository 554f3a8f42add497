package cuelead.dsp.beat;

import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Hearing a song of some minutes: drums of 120 beats a minute in eights. */
@State(Scope.Benchmark)
@Fork(value = 1, jvmArgs = "-Xmx500m")
@Warmup(iterations = 2, time = 2)
@Measurement(iterations = 5, time = 2)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class HearingBenchmark {
    private static final int RATE = 22_050;
    private static final int BEAT_SAMPLES = RATE / 2;
    private static final int STROKE_SAMPLES = 2_000;
    private static final double DECAY_SECONDS = 0.04;
    private static final double KICK_HZ = 55;
    private static final double SNARE_HZ = 190;

    @Param({"1", "6"})
    private int minutes;

    private float[] samples = new float[0];
    private BandSpectrum spectrum = BandSpectrum.of(samples);
    private final BeatNetwork network = BeatNetwork.load();

    @Setup
    public void play() {
        samples = new float[minutes * 60 * RATE];
        for (int start = 0; start + STROKE_SAMPLES < samples.length; start += BEAT_SAMPLES) {
            stroke(start, start / BEAT_SAMPLES % 2 == 0 ? KICK_HZ : SNARE_HZ);
        }
        spectrum = BandSpectrum.of(samples);
    }

    private void stroke(int start, double hz) {
        for (int i = 0; i < STROKE_SAMPLES; i++) {
            double seconds = (double) i / RATE;
            samples[start + i] = (float) (Math.sin(2 * Math.PI * hz * seconds) * Math.exp(-seconds / DECAY_SECONDS));
        }
    }

    /** Samples to bands. */
    @Benchmark
    public BandSpectrum spectrum() {
        return BandSpectrum.of(samples);
    }

    /** Bands to what the network hears. */
    @Benchmark
    public Activations network() {
        return network.hear(spectrum, done -> {});
    }

    /** Bands to counted beats: all that follows, the network too. */
    @Benchmark
    public Optional<Rhythm> rhythm() {
        return new RhythmSearch(network).find(spectrum, done -> {});
    }
}
