package cuelead.output;

import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;

/**
 * Whether a named device is still there. Some systems (PulseAudio, PipeWire) do not say that a device is gone: they
 * move its sound to another one, and so calls for the ear would be heard in the hall. A thread of its own looks for the
 * name whenever the list of devices has changed, or all the time where nothing tells of that. Likewise it looks which
 * device is the default, where that must be asked for.
 */
final class DevicePresence implements AutoCloseable {
    private static final long LOOK_NANOS = TimeUnit.MILLISECONDS.toNanos(200);
    /** A sound server that stands still answers no look. */
    private static final long MOST_CLOSING_MILLIS = 200;

    private final Optional<DeviceName> name;
    private final Thread thread = new Thread(this::watch, "cuelead-device-presence");
    private int seenChanges = SystemEvents.listChanges();
    private Optional<DeviceName> seenDefault = Optional.empty();
    private volatile boolean isGone;
    private volatile boolean isEnding;

    /** Of a device that is open. */
    DevicePresence(AlDevice device) {
        name = device.name();
        if (name.isPresent() || device.isDefaultToBeAskedFor()) {
            thread.setDaemon(true);
            thread.start();
        }
    }

    private void watch() {
        while (!isEnding) {
            LockSupport.parkNanos(LOOK_NANOS);
            if (!isEnding) {
                name.ifPresentOrElse(this::lookFor, this::lookForDefault);
            }
        }
    }

    private void lookFor(DeviceName wanted) {
        int changes = SystemEvents.listChanges();
        // a server that comes back tells nothing, so a lost device is looked for again and again
        if (!SystemEvents.areTold() || changes != seenChanges || isGone) {
            seenChanges = changes;
            isGone = !DeviceName.all().contains(wanted);
        }
    }

    private void lookForDefault() {
        Optional<DeviceName> now = DeviceName.usual();
        if (now.isPresent() && !now.equals(seenDefault)) {
            if (seenDefault.isPresent()) {
                SystemEvents.countDefaultChange();
            }
            seenDefault = now;
        }
    }

    /** Realtime-safe. */
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
