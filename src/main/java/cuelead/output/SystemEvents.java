package cuelead.output;

import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.lwjgl.openal.ALCCapabilities;
import org.lwjgl.openal.SOFTSystemEventProc;
import org.lwjgl.openal.SOFTSystemEvents;

/**
 * Counts what the system says about its devices, as far as it says anything. OpenAL calls back to one place in the
 * whole program: hence what is shared.
 */
final class SystemEvents {
    private static final int DEFAULT_CHANGED = SOFTSystemEvents.ALC_EVENT_TYPE_DEFAULT_DEVICE_CHANGED_SOFT;
    private static final int ADDED = SOFTSystemEvents.ALC_EVENT_TYPE_DEVICE_ADDED_SOFT;
    private static final int REMOVED = SOFTSystemEvents.ALC_EVENT_TYPE_DEVICE_REMOVED_SOFT;
    private static final int PLAYBACK = SOFTSystemEvents.ALC_PLAYBACK_DEVICE_SOFT;
    private static final AtomicInteger DEFAULT_CHANGES = new AtomicInteger();
    private static final AtomicInteger LIST_CHANGES = new AtomicInteger();
    /** Is never freed: the library may call until the program ends. */
    private static final SOFTSystemEventProc CALLED_BACK = SOFTSystemEventProc.create(
            (eventType, deviceType, device, length, message, userData) -> count(eventType, deviceType));

    private SystemEvents() {}

    private static void count(int eventType, int deviceType) {
        if (deviceType == PLAYBACK) {
            (eventType == DEFAULT_CHANGED ? DEFAULT_CHANGES : LIST_CHANGES).incrementAndGet();
        }
    }

    /** Has the library call back from now on. */
    static void watch(ALCCapabilities capabilities) {
        if (!capabilities.ALC_SOFT_system_events) {
            return;
        }
        int[] told = IntStream.of(DEFAULT_CHANGED, ADDED, REMOVED)
                .filter(type -> SOFTSystemEvents.alcEventIsSupportedSOFT(type, PLAYBACK)
                        == SOFTSystemEvents.ALC_EVENT_SUPPORTED_SOFT)
                .toArray();
        if (told.length > 0) {
            SOFTSystemEvents.nalcEventCallbackSOFT(CALLED_BACK.address(), 0);
            SOFTSystemEvents.alcEventControlSOFT(told, true);
        }
    }

    /** How often another device became the default. Realtime-safe. */
    static int defaultChanges() {
        return DEFAULT_CHANGES.get();
    }

    /** How often a device came or went. Realtime-safe. */
    static int listChanges() {
        return LIST_CHANGES.get();
    }
}
