package cuelead.studio;

import cuelead.report.Refused;
import cuelead.sound.Microphone;
import cuelead.sound.Speakers;
import cuelead.time.SampleRate;
import java.util.Arrays;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;

/**
 * A microphone that listens while speakers play one stream: counts what it gives, and compares its clock with that of the
 * speakers. For one thread.
 */
final class MicrophoneLine {
    /** Some microphones give nothing in their first two seconds. */
    private static final long DEAF_NANOS = TimeUnit.SECONDS.toNanos(6);

    private final Microphone microphone;
    private final Speakers speakers;
    private final LongSupplier nanoClock;
    private long lastNanos;
    private long frames;
    private double[] ahead = new double[1024];
    private int readings;

    /** @param nanoClock as {@link System#nanoTime} */
    MicrophoneLine(Microphone microphone, Speakers speakers, LongSupplier nanoClock) {
        this.microphone = microphone;
        this.speakers = speakers;
        this.nanoClock = nanoClock;
        lastNanos = nanoClock.getAsLong();
    }

    SampleRate rate() {
        return microphone.rate();
    }

    /**
     * What is new; to be called some times a second.
     *
     * @throws Refused when the microphone is gone, or gives nothing
     */
    float[] listen() throws Refused {
        if (microphone.isLost()) {
            throw new Refused("The microphone is gone: connect it, and rehearse again.");
        }
        float[] heard = microphone.read();
        if (heard.length > 0) {
            lastNanos = nanoClock.getAsLong();
            frames += heard.length;
        } else if (nanoClock.getAsLong() - lastNanos > DEAF_NANOS) {
            throw new Refused("The microphone gives no sound: see in the system's settings whether it is switched on"
                    + " and whether programs may use it.");
        }
        long played = speakers.heardFrame();
        if (frames > 0 && played > 0 && !speakers.isDeviceLost()) {
            note((double) frames - played);
        }
        return heard;
    }

    private void note(double framesAhead) {
        if (readings == ahead.length) {
            ahead = Arrays.copyOf(ahead, 2 * readings);
        }
        ahead[readings] = framesAhead;
        readings++;
    }

    /** How many frames the microphone has given. */
    long frames() {
        return frames;
    }

    /** How many readings {@link #offsetFrames} is the middle of. */
    int readings() {
        return readings;
    }

    /**
     * How many frames more the microphone has given than the speakers have played, by their clocks, in the middle since
     * {@link #readAnew}: single readings are off by what the microphone gives at a time.
     */
    double offsetFrames() {
        double[] sorted = Arrays.copyOf(ahead, readings);
        Arrays.sort(sorted);
        return readings == 0 ? 0 : (sorted[(readings - 1) / 2] + sorted[readings / 2]) / 2;
    }

    /** Forgets how the clocks stood. */
    void readAnew() {
        readings = 0;
    }
}
