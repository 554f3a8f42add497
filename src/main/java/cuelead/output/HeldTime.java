package cuelead.output;

import java.util.concurrent.TimeUnit;

/**
 * How long a device holds the sound before it is heard, from what the device says of it. Not all of that is true: until
 * a sound server has answered for the first time, the library makes up a number, always the same and far too small; and
 * a server that stood still counts its standstill in for some seconds. What is usual with the device is taken then.
 * Realtime-safe.
 */
final class HeldTime {
    /** Devices take sound by so much at least: what they hold is more, now and then. */
    private static final double LEAST_SECONDS = 0.02;
    /** After this a device that says little, and always the same, is believed. */
    private static final long SILENT_NANOS = TimeUnit.SECONDS.toNanos(3);

    /** The first true numbers are still wild. */
    private static final long WILD_NANOS = TimeUnit.MILLISECONDS.toNanos(200);

    private static final long DOUBT_NANOS = TimeUnit.SECONDS.toNanos(8);
    /** What is said rises and falls by a buffer: so much of a new value goes into what is usual. */
    private static final double NEW_SHARE = 0.02;

    private double usualSeconds;
    private double firstSeconds = -1;
    private long wildUntilNanos;
    private long silentUntilNanos;
    private long doubtedUntilNanos;

    /**
     * A device that was opened just now.
     *
     * @param usualSeconds is taken until more is known
     */
    HeldTime(double usualSeconds, long nanos) {
        this.usualSeconds = usualSeconds;
        opened(nanos);
    }

    /** The device was opened anew, or another in its place. */
    void opened(long nanos) {
        firstSeconds = -1;
        wildUntilNanos = nanos;
        silentUntilNanos = nanos;
        doubtedUntilNanos = nanos;
    }

    /** The device stood still until now. */
    void stoodStill(long nanos) {
        doubtedUntilNanos = nanos + DOUBT_NANOS;
    }

    /** What is usual with it. */
    double usualSeconds() {
        return usualSeconds;
    }

    /**
     * How long what is handed over now is held.
     *
     * @param saidSeconds what the device says; 0 when it does not know
     */
    double after(double saidSeconds, long nanos) {
        if (!isTrue(saidSeconds, nanos)) {
            return usualSeconds;
        }
        usualSeconds += NEW_SHARE * (saidSeconds - usualSeconds);
        return saidSeconds;
    }

    private boolean isTrue(double saidSeconds, long nanos) {
        if (firstSeconds < 0 && saidSeconds > 0) {
            firstSeconds = saidSeconds;
            silentUntilNanos = nanos + SILENT_NANOS;
        }
        if (saidSeconds <= 0 || isMadeUp(saidSeconds, nanos)) {
            wildUntilNanos = nanos + WILD_NANOS;
        }
        return saidSeconds > 0 && nanos - wildUntilNanos >= 0 && nanos - doubtedUntilNanos >= 0;
    }

    private boolean isMadeUp(double saidSeconds, long nanos) {
        return saidSeconds == firstSeconds && saidSeconds < LEAST_SECONDS && nanos - silentUntilNanos < 0;
    }
}
