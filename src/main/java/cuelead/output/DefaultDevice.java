package cuelead.output;

/**
 * Notices when the system's default device becomes another, where the system says so; some (PulseAudio, PipeWire)
 * move the sound themselves instead.
 */
final class DefaultDevice {
    private int seenChanges = SystemEvents.defaultChanges();

    /** Whether it has changed since the last time that this said so. Realtime-safe. */
    boolean hasChanged() {
        int changes = SystemEvents.defaultChanges();
        boolean hasChanged = changes != seenChanges;
        seenChanges = changes;
        return hasChanged;
    }
}
