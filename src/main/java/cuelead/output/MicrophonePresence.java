package cuelead.output;

import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;

/**
 * Whether a microphone is still there. Some systems do not say that one was unplugged, and give the sound of another source
 * in its place; there a thread of its own looks for its name.
 */
final class MicrophonePresence implements AutoCloseable {
    private static final long LOOK_NANOS = TimeUnit.MILLISECONDS.toNanos(500);
    /** A sound server that stands still answers no look. */
    private static final long MOST_CLOSING_MILLIS = 200;

    private final Thread thread;
    private volatile boolean isGone;
    private volatile boolean isEnding;

    /** @param name of the microphone that is open; empty = it is not looked for */
    MicrophonePresence(Optional<DeviceName> name) {
        thread = new Thread(() -> name.ifPresent(this::watch), "cuelead-microphone-presence");
        thread.setDaemon(true);
        if (!SystemEvents.areTold()) {
            thread.start();
        }
    }

    private void watch(DeviceName name) {
        while (!isEnding && !isGone) {
            LockSupport.parkNanos(LOOK_NANOS);
            isGone = !isEnding && !DeviceName.microphones().contains(name);
        }
    }

    boolean isGone() {
        return isGone;
    }

    /** Waits for a look that has begun: the process must not end within one. */
    @Override
    public void close() {
        isEnding = true;
        LockSupport.unpark(thread);
        try {
            thread.join(MOST_CLOSING_MILLIS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt(); // the thread ends on its own
        }
    }
}
