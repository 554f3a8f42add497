package cuelead.sound;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** A three-minute song with 250 calls and a click on every beat. */
@State(Scope.Benchmark)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class MixBenchmark {
    private static final int SECONDS = 180;
    private static final int CALLS = 250;
    private static final int BLOCK_FRAMES = 512;

    /** Decibels on top of a balanced mix: none, or so many that the limiter works all the time. */
    @Param({"0", "12"})
    private double louderDb;

    private final float[] block = new float[BLOCK_FRAMES * Sound.CHANNELS];
    private MixPlan plan;
    private Mix running;

    @Setup
    public void plan() {
        Pcm song = Band.song(SECONDS, 0.7);
        List<PlacedClip> clips = new ArrayList<>();
        for (int call = 0; call < CALLS; call++) {
            long start = Band.RATE.frameAt(2 + call * (SECONDS - 3.0) / CALLS);
            clips.add(PlacedClip.whole(start, Band.word(0.45, call % 40)));
        }
        MixPlan even = MixPlan.whole(Band.RATE, Optional.of(song), clips, Band.clicks(SECONDS), Levels.EVEN);
        plan = even.withLevels(Balance.of(even, Band.powers(song)).louderBy(louderDb));
        running = new Mix(plan);
    }

    /** Seconds of sound in a second: how many times faster than it plays. */
    @Benchmark
    @BenchmarkMode(Mode.Throughput)
    @OperationsPerInvocation(SECONDS)
    @OutputTimeUnit(TimeUnit.SECONDS)
    public float timesRealTime() {
        Mix mix = new Mix(plan);
        float sum = 0;
        while (mix.read(block, BLOCK_FRAMES) > 0) {
            sum += block[0];
        }
        return sum;
    }

    /** One block of 512 frames (11.6 ms of sound); its p1.00 is the worst. */
    @Benchmark
    @BenchmarkMode(Mode.SampleTime)
    @OutputTimeUnit(TimeUnit.MILLISECONDS)
    public int block() {
        int got = running.read(block, BLOCK_FRAMES);
        if (got == 0) {
            running = new Mix(plan);
        }
        return got;
    }
}
