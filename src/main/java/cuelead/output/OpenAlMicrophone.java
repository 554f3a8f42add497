package cuelead.output;

import cuelead.report.Refused;
import cuelead.sound.Microphone;
import cuelead.time.SampleRate;
import java.nio.FloatBuffer;
import java.util.Optional;
import org.lwjgl.openal.ALC10;
import org.lwjgl.openal.ALC11;
import org.lwjgl.openal.EXTDisconnect;
import org.lwjgl.openal.EXTFloat32;
import org.lwjgl.system.MemoryUtil;

/** A microphone, by OpenAL capture (OpenAL 1.1 specification, section 6.4.2). For one thread. */
public final class OpenAlMicrophone implements Microphone {
    private static final String NONE = "No microphone could be opened: plug one in, and in the system's settings allow"
            + " this program to use it.";
    /** What is not read in this time is lost. */
    private static final int BUFFER_SECONDS = 4;

    private final long device;
    private final SampleRate rate;
    private final MicrophonePresence presence;

    private OpenAlMicrophone(long device, SampleRate rate, MicrophonePresence presence) {
        this.device = device;
        this.rate = rate;
        this.presence = presence;
    }

    /**
     * Opens the system's usual one and begins to listen.
     *
     * @param rate that samples come at, whatever the device has
     * @throws Refused when there is none, or the system does not give it
     */
    public static OpenAlMicrophone open(SampleRate rate) throws Refused {
        return open(rate, Optional.empty()).orElseThrow(() -> new Refused(NONE));
    }

    /**
     * The same with the microphone of a name, see {@link DeviceName#microphones}.
     *
     * @throws Refused when it is not there or in use
     */
    public static OpenAlMicrophone open(SampleRate rate, DeviceName name) throws Refused {
        return open(rate, Optional.of(name))
                .orElseThrow(() -> name.refusal(DeviceName.microphones(), DeviceName.Kind.MICROPHONE));
    }

    private static Optional<OpenAlMicrophone> open(SampleRate rate, Optional<DeviceName> name) throws Refused {
        try {
            QuietLibrary.ask();
            Optional<DeviceName> meant = name.or(DeviceName::usualMicrophone);
            refuseOwnSound(meant);
            CharSequence wanted = name.map(DeviceName::text).orElse(null); // the library's word for the usual one
            long device = QuietStandardError.during(() -> ALC11.alcCaptureOpenDevice(
                    wanted, rate.hz(), EXTFloat32.AL_FORMAT_MONO_FLOAT32, BUFFER_SECONDS * rate.hz()));
            if (device == 0) {
                return Optional.empty();
            }
            ALC11.alcCaptureStart(device);
            return Optional.of(new OpenAlMicrophone(device, rate, new MicrophonePresence(meant)));
        } catch (LinkageError noLibrary) {
            throw new Refused(NONE, noLibrary);
        }
    }

    /** A system without a microphone may offer what it plays itself in its place. */
    private static void refuseOwnSound(Optional<DeviceName> meant) throws Refused {
        if (meant.isPresent() && meant.get().isOwnSound()) {
            throw new Refused(
                    "\"" + meant.get().told() + "\" hears what the computer itself plays and is no microphone:"
                            + " plug one in, or choose another (\"cuelead devices\" lists them).");
        }
    }

    @Override
    public SampleRate rate() {
        return rate;
    }

    @Override
    public float[] read() {
        int frames = ALC10.alcGetInteger(device, ALC11.ALC_CAPTURE_SAMPLES);
        float[] heard = new float[Math.max(0, frames)];
        if (frames > 0) {
            FloatBuffer buffer = MemoryUtil.memAllocFloat(frames);
            try {
                ALC11.alcCaptureSamples(device, buffer, frames);
                buffer.get(0, heard);
            } finally {
                MemoryUtil.memFree(buffer);
            }
        }
        return heard;
    }

    @Override
    public boolean isLost() {
        return presence.isGone() || isDisconnected();
    }

    private boolean isDisconnected() {
        return ALC10.alcGetInteger(device, EXTDisconnect.ALC_CONNECTED) == ALC10.ALC_FALSE;
    }

    @Override
    public void close() {
        presence.close();
        if (isDisconnected()) {
            return; // the library would wait for an answer of the sound server for ever
        }
        ALC11.alcCaptureStop(device);
        ALC11.alcCaptureCloseDevice(device);
    }
}
