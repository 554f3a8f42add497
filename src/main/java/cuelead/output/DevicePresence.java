package cuelead.output;

import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;

/**
 * Whether a named device is still there. Some systems (PulseAudio, PipeWire) do not say that a device is gone: they
 * move its sound to another one, and so calls for the ear would be heard in the hall. A thread of its own looks for the
 * name whenever the list of devices has changed.
 */
final class DevicePresence implements AutoCloseable {
    private static final long LOOK_NANOS = TimeUnit.MILLISECONDS.toNanos(100);

    private final Optional<DeviceName> name;
    private int seenChanges = SystemEvents.listChanges();
    private volatile boolean isGone;
    private volatile boolean isEnding;

    /** @param name empty = any device will do */
    DevicePresence(Optional<DeviceName> name) {
        this.name = name;
        if (name.isPresent()) {
            Thread thread = new Thread(this::watch, "cuelead-device-presence");
            thread.setDaemon(true);
            thread.start();
        }
    }

    private void watch() {
        while (!isEnding) {
            LockSupport.parkNanos(LOOK_NANOS);
            int changes = SystemEvents.listChanges();
            // a server that comes back tells nothing, so a lost device is looked for again and again
            if (changes != seenChanges || isGone) {
                seenChanges = changes;
                isGone = !name.map(DeviceName.all()::contains).orElse(true);
            }
        }
    }

    /** Realtime-safe. */
    boolean isGone() {
        return isGone;
    }

    @Override
    public void close() {
        isEnding = true;
    }
}
