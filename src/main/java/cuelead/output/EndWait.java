package cuelead.output;

import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import java.util.function.BooleanSupplier;

/** Waits for the end of a sound, which nobody tells. */
final class EndWait {
    private static final long LOOK_NANOS = TimeUnit.MILLISECONDS.toNanos(10);

    private EndWait() {}

    /**
     * Waits until it has ended, or for so long, to a fraction of a millisecond: displays are drawn by it.
     *
     * @return whether it has ended
     */
    static boolean until(BooleanSupplier hasEnded, long timeoutMillis) throws InterruptedException {
        long deadline = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(timeoutMillis);
        long leftNanos = deadline - System.nanoTime();
        while (leftNanos > 0 && !hasEnded.getAsBoolean()) {
            LockSupport.parkNanos(Math.min(leftNanos, LOOK_NANOS));
            if (Thread.interrupted()) {
                throw new InterruptedException();
            }
            leftNanos = deadline - System.nanoTime();
        }
        return hasEnded.getAsBoolean();
    }
}
