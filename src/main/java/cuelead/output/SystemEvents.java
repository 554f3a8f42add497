package cuelead.output;

import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.lwjgl.openal.ALCCapabilities;
import org.lwjgl.openal.SOFTSystemEventProc;
import org.lwjgl.openal.SOFTSystemEvents;
import org.lwjgl.system.Platform;

/**
 * Counts what the system says about its devices, as far as it says anything. OpenAL calls back to one place in the
 * whole program: hence what is shared.
 *
 * <p>On Linux nothing may call back: the thread that does so is the sound server's client thread, becomes a thread of
 * Java by it, and must leave Java when it ends. It ends while the process does, joined by the sound library's own
 * clearing up; by then the virtual machine lets no thread leave any more, and the process would never end. There
 * {@link DevicePresence} looks instead.
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
        if (!capabilities.ALC_SOFT_system_events || !areTold()) {
            return;
        }
        int[] told = IntStream.of(DEFAULT_CHANGED, ADDED, REMOVED)
                .filter(SystemEvents::isSupported)
                .toArray();
        if (told.length > 0) {
            SOFTSystemEvents.nalcEventCallbackSOFT(CALLED_BACK.address(), 0);
            SOFTSystemEvents.alcEventControlSOFT(told, true);
        }
    }

    private static boolean isSupported(int type) {
        return SOFTSystemEvents.alcEventIsSupportedSOFT(type, PLAYBACK) == SOFTSystemEvents.ALC_EVENT_SUPPORTED_SOFT;
    }

    /** Whether the system may tell by itself, or must be asked. */
    static boolean areTold() {
        return Platform.get() != Platform.LINUX;
    }

    /** Whether whoever plays on the default device must ask which that is, and move there. */
    static boolean isDefaultToBeAskedFor(ALCCapabilities capabilities) {
        return !areTold() && capabilities.ALC_SOFT_system_events && isSupported(DEFAULT_CHANGED);
    }

    /** Counts a change that was found by asking. */
    static void countDefaultChange() {
        DEFAULT_CHANGES.incrementAndGet();
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
