package cuelead.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.sound.LiveMix;
import cuelead.sound.Mix;
import cuelead.sound.Pcm;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.locks.ReentrantLock;
import org.junit.jupiter.api.Test;

/** The audio thread never waits: its code takes no lock, writes nothing and makes nothing. */
class AudioPathTest {
    /** All that it may call outside of itself; what is called on numbers and arrays, then what never waits, then OpenAL. */
    private static final Set<String> KNOWN = Set.of(
            "java.lang.Math.abs",
            "java.lang.Math.ceil",
            "java.lang.Math.cos",
            "java.lang.Math.exp",
            "java.lang.Math.floor",
            "java.lang.Math.floorDiv",
            "java.lang.Math.floorMod",
            "java.lang.Math.log10",
            "java.lang.Math.max",
            "java.lang.Math.min",
            "java.lang.Math.pow",
            "java.lang.Float.floatToRawIntBits",
            "java.lang.Long.numberOfTrailingZeros",
            "java.lang.Math.rint",
            "java.lang.Math.round",
            "java.lang.Math.sin",
            "java.lang.Math.sqrt",
            "java.lang.StrictMath.exp",
            "java.lang.System.arraycopy",
            "java.util.Arrays.binarySearch",
            "java.util.Arrays.fill",
            "java.util.Set.contains",
            "java.util.concurrent.ConcurrentLinkedQueue.poll",
            "java.util.concurrent.atomic.AtomicInteger.get",
            "java.util.concurrent.atomic.AtomicInteger.incrementAndGet",
            "java.util.concurrent.atomic.AtomicReference.get",
            "java.util.concurrent.atomic.AtomicReference.getAndSet",
            "java.util.function.LongSupplier.getAsLong", // System.nanoTime
            "java.nio.FloatBuffer.put",
            "org.lwjgl.openal.AL10.alSourcePause",
            "org.lwjgl.openal.AL10.alSourcePlay",
            "org.lwjgl.openal.AL10.alSourceRewind",
            "org.lwjgl.openal.AL10.alSourceStop",
            "org.lwjgl.openal.AL10.alSourcei",
            "org.lwjgl.openal.AL10.nalBufferData",
            "org.lwjgl.openal.AL10.nalGetSourcei",
            "org.lwjgl.openal.AL10.nalSourceQueueBuffers",
            "org.lwjgl.openal.AL10.nalSourceUnqueueBuffers",
            "org.lwjgl.openal.ALC10.nalcGetIntegerv",
            "org.lwjgl.openal.SOFTSourceLatency.nalGetSourcedvSOFT",
            "org.lwjgl.system.MemoryUtil.memAddress",
            "org.lwjgl.system.MemoryUtil.memGetDouble",
            "org.lwjgl.system.MemoryUtil.memGetInt",
            "org.lwjgl.system.MemoryUtil.memPutInt");

    private static Map<String, String> unknown(ReachedCode reached) {
        Map<String, String> unknown = new TreeMap<>(reached.deeds());
        unknown.keySet().removeAll(KNOWN);
        return unknown;
    }

    @Test
    void theAudioThreadLocksLogsAndMakesNothing() {
        ReachedCode reached = ReachedCode.within("cuelead.output", "cuelead.sound", "cuelead.dsp", "cuelead.time")
                .from(Orders.class, "obey")
                .from(AlStream.class, "pump")
                .from(DefaultDevice.class, "hasChanged");
        assertEquals(Map.of(), unknown(reached));
        assertTrue(reached.reaches(Order.Begin.class, "on"));
        assertTrue(reached.reaches(Mix.class, "read"));
        assertTrue(reached.reaches(LiveMix.class, "read"));
        assertTrue(reached.reaches(Pcm.class, "copy"));
    }

    /** What would be found. */
    @Test
    void whatMayWaitIsFound() {
        ReachedCode reached =
                ReachedCode.within(Careless.class, Meddler.class, Shouter.class).from(Careless.class, "read");
        assertEquals(
                Set.of(
                        "synchronized",
                        "new array",
                        "new java.lang.Object",
                        "java.lang.Object.<init>",
                        "java.lang.String.valueOf",
                        "java.util.concurrent.locks.ReentrantLock.lock",
                        "java.io.PrintStream.println",
                        "lambda or string makeConcatWithConstants"),
                unknown(reached).keySet());
    }

    /** Does nothing wrong itself. */
    private interface Meddler {
        void meddle(int frames);
    }

    private record Careless(Meddler meddler) {
        @SuppressWarnings("UnusedMethod") // is named above
        void read(int frames) {
            meddler.meddle(frames);
        }
    }

    private static final class Shouter implements Meddler {
        private final ReentrantLock lock = new ReentrantLock();
        private int[] numbers = {};

        @Override
        public void meddle(int frames) {
            lock.lock();
            synchronized (this) {
                numbers = new int[frames];
            }
            System.out.println("frames " + frames + numbers.length + new Object());
        }
    }
}
