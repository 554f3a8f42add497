package cuelead.sound;

import cuelead.dsp.stretch.OnsetFinder;
import cuelead.dsp.stretch.Onsets;
import cuelead.time.Speed;
import cuelead.time.TimeMap;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.AuxCounters;
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

/** A song slowed, and its onsets found. */
@State(Scope.Benchmark)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class StretchBenchmark {
    private static final int SECONDS = 20;
    private static final int BLOCK_FRAMES = 1024;

    @Param({"0.5", "0.75", "0.9"})
    private double speed;

    private final float[] block = new float[BLOCK_FRAMES * Sound.CHANNELS];
    private Pcm song;
    private MusicReader reader;
    private long next;

    @Setup
    public void findOnsets() {
        song = Band.song(SECONDS * 2, 0.7);
        Onsets onsets = OnsetFinder.of(song::copy, song.rate(), song.lengthFrames());
        reader = new SlowedMusic(song, onsets, TimeMap.even(Speed.of(speed))).reader();
    }

    /**
     * What a machine that does other things besides does not blur: times real time on one core is the first divided by
     * the second.
     */
    @AuxCounters(AuxCounters.Type.EVENTS)
    @State(Scope.Thread)
    public static class OneCore {
        private static final int NANOS_IN_MILLI = 1_000_000;

        private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        public long soundMillis;
        public long cpuMillis;

        private void count(long sinceNanos) {
            soundMillis += SECONDS * 1_000L;
            cpuMillis += (threads.getCurrentThreadCpuTime() - sinceNanos) / NANOS_IN_MILLI;
        }
    }

    /** Seconds of output in a second, from a new beginning each time. */
    @Benchmark
    @BenchmarkMode(Mode.Throughput)
    @OperationsPerInvocation(SECONDS)
    @OutputTimeUnit(TimeUnit.SECONDS)
    public float timesRealTime(OneCore core) {
        long sinceNanos = core.threads.getCurrentThreadCpuTime();
        float sum = 0;
        for (long at = 0; at < (long) SECONDS * song.rate().hz(); at += BLOCK_FRAMES) {
            reader.copy(at, block, BLOCK_FRAMES);
            sum += block[0];
        }
        core.count(sinceNanos);
        return sum;
    }

    /** One block of 1024 frames (23 ms of sound); its p1.00 is the worst, which is that of a beginning. */
    @Benchmark
    @BenchmarkMode(Mode.SampleTime)
    @OutputTimeUnit(TimeUnit.MILLISECONDS)
    public float block() {
        next = next > (long) SECONDS * song.rate().hz() ? 0 : next + BLOCK_FRAMES;
        reader.copy(next, block, BLOCK_FRAMES);
        return block[0];
    }

    /** Seconds of the song that are searched in a second. */
    @Benchmark
    @BenchmarkMode(Mode.Throughput)
    @OperationsPerInvocation(2 * SECONDS)
    @OutputTimeUnit(TimeUnit.SECONDS)
    public int onsetSearch() {
        return OnsetFinder.of(song::copy, song.rate(), song.lengthFrames()).count();
    }
}
