package cuelead.output;

import static org.lwjgl.openal.AL10.AL_TRUE;
import static org.lwjgl.openal.AL10.alSourcei;

import cuelead.sound.Sound;
import cuelead.time.SampleRate;
import java.nio.FloatBuffer;
import org.lwjgl.openal.AL10;
import org.lwjgl.openal.EXTFloat32;
import org.lwjgl.system.MemoryUtil;

/** Plays silence always, so that no device falls asleep and swallows what comes first. */
final class SilentSource implements AutoCloseable {
    private static final double LOOP_SECONDS = 0.1;

    private final int source = AL10.alGenSources();
    private final int buffer = AL10.alGenBuffers();
    private final long nativeInt = MemoryUtil.nmemCalloc(1, Integer.BYTES);

    SilentSource(SampleRate rate) {
        FloatBuffer silence = MemoryUtil.memCallocFloat(rate.framesIn(LOOP_SECONDS) * Sound.CHANNELS);
        AL10.alBufferData(buffer, EXTFloat32.AL_FORMAT_STEREO_FLOAT32, silence, rate.hz());
        MemoryUtil.memFree(silence);
        alSourcei(source, AL10.AL_BUFFER, buffer);
        alSourcei(source, AL10.AL_LOOPING, AL_TRUE);
        play();
    }

    void play() {
        AL10.alSourcePlay(source);
    }

    /** As long as the device is there. Realtime-safe. */
    boolean isPlaying() {
        AL10.nalGetSourcei(source, AL10.AL_SOURCE_STATE, nativeInt);
        return MemoryUtil.memGetInt(nativeInt) == AL10.AL_PLAYING;
    }

    @Override
    public void close() {
        AL10.alSourceStop(source);
        AL10.alDeleteSources(source);
        AL10.alDeleteBuffers(buffer);
        MemoryUtil.nmemFree(nativeInt);
    }
}
