package cuelead.output;

import static org.lwjgl.openal.ALC10.ALC_FREQUENCY;
import static org.lwjgl.openal.ALC10.alcCloseDevice;
import static org.lwjgl.openal.ALC10.alcCreateContext;
import static org.lwjgl.openal.ALC10.alcDestroyContext;
import static org.lwjgl.openal.ALC10.alcOpenDevice;

import cuelead.report.Refused;
import cuelead.time.SampleRate;
import java.nio.ByteBuffer;
import java.nio.FloatBuffer;
import java.util.Optional;
import org.lwjgl.openal.AL;
import org.lwjgl.openal.ALC;
import org.lwjgl.openal.ALC10;
import org.lwjgl.openal.ALCCapabilities;
import org.lwjgl.openal.EXTDisconnect;
import org.lwjgl.openal.EXTThreadLocalContext;
import org.lwjgl.openal.SOFTHRTF;
import org.lwjgl.openal.SOFTLoopback;
import org.lwjgl.openal.SOFTOutputLimiter;
import org.lwjgl.openal.SOFTReopenDevice;
import org.lwjgl.system.MemoryUtil;

/**
 * An OpenAL device with its context, told to leave the sound alone: at the mix's own rate, without limiter and
 * without head-related filters, whatever the user's OpenAL configuration says.
 */
final class AlDevice implements AutoCloseable {
    /** What can be done without one is for whoever wants to play to say. */
    private static final String NO_DEVICE = "No sound device could be opened; connect one.";

    /** The library asks devices for three times 20 ms; on the average half of one is played. */
    private static final double USUAL_LATENCY_SECONDS = 0.05;

    private final long device;
    private final Optional<DeviceName> name;
    private final double usualLatencySeconds;
    private final long context;
    private final ALCCapabilities capabilities;
    private final int[] attributes;
    private final long connectedAddress = MemoryUtil.nmemCalloc(1, Integer.BYTES);

    private AlDevice(long device, Optional<DeviceName> name, double usualLatencySeconds, int[] attributes)
            throws Refused {
        this.device = device;
        this.name = name;
        this.usualLatencySeconds = usualLatencySeconds;
        this.attributes = attributes;
        capabilities = ALC.createCapabilities(device);
        context = alcCreateContext(device, attributes);
        if (context == 0 || !capabilities.ALC_EXT_thread_local_context) {
            close();
            throw new Refused(NO_DEVICE);
        }
    }

    /** @throws Refused when there is none */
    static AlDevice openDefault(SampleRate rate) throws Refused {
        return open(rate, Optional.empty()).orElseThrow(() -> new Refused(NO_DEVICE));
    }

    /** @throws Refused when it is not there or in use */
    static AlDevice openNamed(SampleRate rate, DeviceName name) throws Refused {
        return open(rate, Optional.of(name))
                .orElseThrow(() -> name.refusal(DeviceName.all(), DeviceName.Kind.SOUND_DEVICE));
    }

    private static Optional<AlDevice> open(SampleRate rate, Optional<DeviceName> name) throws Refused {
        try {
            QuietLibrary.ask();
            CharSequence wanted = name.map(DeviceName::text).orElse(null); // the library's word for its default
            long device = QuietStandardError.during(() -> alcOpenDevice(wanted));
            if (device == 0) {
                return Optional.empty();
            }
            AlDevice opened = new AlDevice(device, name, USUAL_LATENCY_SECONDS, attributes(rate));
            SystemEvents.watch(opened.capabilities);
            return Optional.of(opened);
        } catch (LinkageError noLibrary) {
            throw new Refused(NO_DEVICE, noLibrary);
        }
    }

    /** A device without hardware, whose sound is fetched by {@link #render}. */
    static AlDevice openLoopback(SampleRate rate) throws Refused {
        long device = SOFTLoopback.alcLoopbackOpenDeviceSOFT((ByteBuffer) null);
        return new AlDevice(
                device,
                Optional.empty(),
                0,
                attributes(
                        rate,
                        SOFTLoopback.ALC_FORMAT_CHANNELS_SOFT,
                        SOFTLoopback.ALC_STEREO_SOFT,
                        SOFTLoopback.ALC_FORMAT_TYPE_SOFT,
                        SOFTLoopback.ALC_FLOAT_SOFT));
    }

    private static int[] attributes(SampleRate rate, int... more) {
        int[] common = {
            ALC_FREQUENCY,
            rate.hz(),
            SOFTHRTF.ALC_HRTF_SOFT,
            ALC10.ALC_FALSE,
            SOFTOutputLimiter.ALC_OUTPUT_LIMITER_SOFT,
            ALC10.ALC_FALSE
        };
        int[] all = new int[common.length + more.length + 1];
        System.arraycopy(common, 0, all, 0, common.length);
        System.arraycopy(more, 0, all, common.length, more.length);
        return all;
    }

    /** How long it may take until a frame is heard, for as long as the device itself does not know. */
    double usualLatencySeconds() {
        return usualLatencySeconds;
    }

    /** Empty = it is the default one, whichever that may become. */
    Optional<DeviceName> name() {
        return name;
    }

    /** Whether another default becomes known only by asking. */
    boolean isDefaultToBeAskedFor() {
        return name.isEmpty() && SystemEvents.isDefaultToBeAskedFor(capabilities);
    }

    /** Directs the calling thread's OpenAL calls to this device. */
    void useOnThisThread() {
        EXTThreadLocalContext.alcSetThreadContext(context);
        AL.createCapabilities(capabilities);
    }

    /** Ends what {@link #useOnThisThread} began. */
    void leaveThisThread() {
        AL.setCurrentThread(null);
        EXTThreadLocalContext.alcSetThreadContext(0);
    }

    /** Whether the device is still there. Realtime-safe. */
    boolean isConnected() {
        if (!capabilities.ALC_EXT_disconnect) {
            return true;
        }
        ALC10.nalcGetIntegerv(device, EXTDisconnect.ALC_CONNECTED, 1, connectedAddress);
        return MemoryUtil.memGetInt(connectedAddress) != ALC10.ALC_FALSE;
    }

    /** Tries to go on: with the device of its name, or with whatever is the default device now. True when it worked. */
    boolean reopen() {
        CharSequence wanted = name.map(DeviceName::text).orElse(null);
        return capabilities.ALC_SOFT_reopen_device && SOFTReopenDevice.alcReopenDeviceSOFT(device, wanted, attributes);
    }

    /** The next frames of a loopback device. */
    void render(FloatBuffer interleaved, int frames) {
        SOFTLoopback.alcRenderSamplesSOFT(device, interleaved, frames);
    }

    @Override
    public void close() {
        if (context != 0) {
            alcDestroyContext(context);
        }
        alcCloseDevice(device);
        MemoryUtil.nmemFree(connectedAddress);
    }
}
