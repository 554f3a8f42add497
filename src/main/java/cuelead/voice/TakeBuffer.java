package cuelead.voice;

import cuelead.report.Refused;
import cuelead.sound.Microphone;
import cuelead.time.SampleRate;
import java.util.Arrays;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;

/** Listens to a microphone, and holds what it hears while a take is made. For one thread. */
public final class TakeBuffer {
    /** Time for the longest word after the last click. */
    private static final double TAKE_SECONDS = 2.2;
    /** Some microphones give nothing in their first two seconds. */
    private static final long DEAF_NANOS = TimeUnit.SECONDS.toNanos(6);

    /** Of the peak, from one look to the next. */
    private static final double FALLING = 0.9;

    private final Microphone microphone;
    private final LongSupplier nanoClock;
    private final float[] take;
    private long lastNanos;
    private boolean hasHeard;
    private boolean isTaking;
    private int frames;
    private double peak;

    /**
     * With nothing heard yet.
     *
     * @param nanoClock as {@link System#nanoTime}
     */
    public TakeBuffer(Microphone microphone, LongSupplier nanoClock) {
        this.microphone = microphone;
        this.nanoClock = nanoClock;
        take = new float[microphone.rate().framesIn(TAKE_SECONDS)];
        lastNanos = nanoClock.getAsLong();
    }

    public SampleRate rate() {
        return microphone.rate();
    }

    /** How loud it has been lately, 0 to 1; full scale = 1. */
    public double peak() {
        return peak;
    }

    /** Takes what is new from the microphone; to be called some times a second. */
    public void listen() throws Refused {
        float[] heard = microphone.read();
        if (heard.length > 0) {
            peak *= FALLING;
            for (float sample : heard) {
                peak = Math.max(peak, Math.abs(sample));
            }
            lastNanos = nanoClock.getAsLong();
            hasHeard = true;
        } else if (microphone.isLost()) {
            throw new Refused("The microphone is gone. All takes so far are kept: connect it and start again, and it"
                    + " goes on with the words that are missing.");
        } else if (nanoClock.getAsLong() - lastNanos > DEAF_NANOS) {
            throw new Refused("The microphone gives no sound: see in the system's settings whether it is switched on"
                    + " and may be used. All takes so far are kept.");
        }
        if (isTaking) {
            int more = Math.min(heard.length, take.length - frames);
            System.arraycopy(heard, 0, take, frames, more);
            frames += more;
        }
    }

    /** Whether the microphone has begun to give sound. */
    public boolean hasHeard() {
        return hasHeard;
    }

    /** From now on what is heard is of a take. */
    public void begin() {
        isTaking = true;
        frames = 0;
    }

    public boolean isFull() {
        return isTaking && frames == take.length;
    }

    /** The take, which ends here. */
    public MonoSound end() {
        isTaking = false;
        return new MonoSound(Arrays.copyOf(take, frames), microphone.rate());
    }
}
