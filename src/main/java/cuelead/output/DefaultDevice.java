package cuelead.output;

import java.util.concurrent.atomic.AtomicInteger;
import org.lwjgl.openal.ALCCapabilities;
import org.lwjgl.openal.SOFTSystemEventProc;
import org.lwjgl.openal.SOFTSystemEvents;

/**
 * Notices when the system's default device becomes another, where the system says so; some (PulseAudio, PipeWire)
 * move the sound themselves instead. OpenAL calls back to one place in the whole program: hence what is shared.
 */
final class DefaultDevice {
    private static final int CHANGED = SOFTSystemEvents.ALC_EVENT_TYPE_DEFAULT_DEVICE_CHANGED_SOFT;
    private static final int PLAYBACK = SOFTSystemEvents.ALC_PLAYBACK_DEVICE_SOFT;
    private static final AtomicInteger CHANGES = new AtomicInteger();
    /** Is never freed: the library may call until the program ends. */
    private static final SOFTSystemEventProc CALLED_BACK = SOFTSystemEventProc.create(
            (eventType, deviceType, device, length, message, userData) -> countIfPlayback(deviceType));

    private int seenChanges = CHANGES.get();

    private static void countIfPlayback(int deviceType) {
        if (deviceType == PLAYBACK) {
            CHANGES.incrementAndGet();
        }
    }

    /** Has the library call back from now on. */
    static void watch(ALCCapabilities capabilities) {
        if (capabilities.ALC_SOFT_system_events
                && SOFTSystemEvents.alcEventIsSupportedSOFT(CHANGED, PLAYBACK)
                        == SOFTSystemEvents.ALC_EVENT_SUPPORTED_SOFT) {
            SOFTSystemEvents.nalcEventCallbackSOFT(CALLED_BACK.address(), 0);
            SOFTSystemEvents.alcEventControlSOFT(new int[] {CHANGED}, true);
        }
    }

    /** Whether it has changed since the last time that this said so. Realtime-safe. */
    boolean hasChanged() {
        int changes = CHANGES.get();
        boolean hasChanged = changes != seenChanges;
        seenChanges = changes;
        return hasChanged;
    }
}
