package cuelead.output;

import static org.lwjgl.openal.AL10.AL_BUFFER;
import static org.lwjgl.openal.AL10.AL_TRUE;
import static org.lwjgl.openal.AL10.alSourcei;

import cuelead.sound.Sound;
import cuelead.time.SampleRate;
import java.nio.FloatBuffer;
import org.lwjgl.openal.AL10;
import org.lwjgl.openal.EXTFloat32;
import org.lwjgl.openal.SOFTDirectChannels;
import org.lwjgl.openal.SOFTSourceLatency;
import org.lwjgl.system.MemoryUtil;

/**
 * One OpenAL source with its queue of equal buffers. OpenAL Soft fades it over 64 frames when it pauses, goes on or
 * stops; a start from the front of the queue is not faded.
 *
 * <p>Belongs to one thread, whose OpenAL context it uses. Realtime-safe but for making and closing: values go to and
 * from the library through native memory that is reserved once.
 */
final class AlSource implements AutoCloseable {
    private final SampleRate rate;
    private final int source = AL10.alGenSources();
    private final int[] buffers;
    private final int[] free;
    private int freeCount;
    private final FloatBuffer nativeBlock;
    private final long nativeInt = MemoryUtil.nmemCalloc(1, Integer.BYTES);
    private final long nativeClock = MemoryUtil.nmemCalloc(2, Double.BYTES);

    AlSource(SampleRate rate, int bufferCount, int bufferFrames) {
        this.rate = rate;
        buffers = new int[bufferCount];
        free = new int[bufferCount];
        nativeBlock = MemoryUtil.memCallocFloat(bufferFrames * Sound.CHANNELS);
        AL10.alGenBuffers(buffers);
        alSourcei(source, SOFTDirectChannels.AL_DIRECT_CHANNELS_SOFT, AL_TRUE);
        freeAll();
    }

    private void freeAll() {
        System.arraycopy(buffers, 0, free, 0, buffers.length);
        freeCount = buffers.length;
    }

    /** How many buffers wait to be filled. */
    int freeBuffers() {
        return freeCount;
    }

    /** Puts a block at the end of the queue; there must be a free buffer. */
    void queue(float[] block) {
        int buffer = free[--freeCount];
        nativeBlock.put(0, block);
        AL10.nalBufferData(
                buffer,
                EXTFloat32.AL_FORMAT_STEREO_FLOAT32,
                MemoryUtil.memAddress(nativeBlock),
                block.length * Float.BYTES,
                rate.hz());
        MemoryUtil.memPutInt(nativeInt, buffer);
        AL10.nalSourceQueueBuffers(source, 1, nativeInt);
    }

    /** Takes what has been played off the front of the queue and says how many buffers that were. */
    int unqueuePlayed() {
        int played = get(AL10.AL_BUFFERS_PROCESSED);
        for (int i = 0; i < played; i++) {
            AL10.nalSourceUnqueueBuffers(source, 1, nativeInt);
            free[freeCount++] = MemoryUtil.memGetInt(nativeInt);
        }
        return played;
    }

    void play() {
        AL10.alSourcePlay(source);
    }

    void pause() {
        AL10.alSourcePause(source);
    }

    /** Silence, and an empty queue. */
    void clear() {
        AL10.alSourceStop(source);
        alSourcei(source, AL_BUFFER, 0);
        AL10.alSourceRewind(source); // to a source that has stopped, whatever is queued later counts as played
        freeAll();
    }

    /** Whether the queue was played to its end, or the device is gone. */
    boolean isStopped() {
        return get(AL10.AL_SOURCE_STATE) == AL10.AL_STOPPED;
    }

    /** Reads {@link #offsetSeconds} and {@link #latencySeconds}, both at one instant. */
    void readClock() {
        SOFTSourceLatency.nalGetSourcedvSOFT(source, SOFTSourceLatency.AL_SEC_OFFSET_LATENCY_SOFT, nativeClock);
    }

    /** How far from the front of the queue the sound has been handed to the device; 0 when stopped. */
    double offsetSeconds() {
        return MemoryUtil.memGetDouble(nativeClock);
    }

    /** How long after now what is handed to the device now will be heard. */
    double latencySeconds() {
        return MemoryUtil.memGetDouble(nativeClock + Double.BYTES);
    }

    private int get(int what) {
        AL10.nalGetSourcei(source, what, nativeInt);
        return MemoryUtil.memGetInt(nativeInt);
    }

    @Override
    public void close() {
        clear();
        AL10.alDeleteSources(source);
        AL10.alDeleteBuffers(buffers);
        MemoryUtil.memFree(nativeBlock);
        MemoryUtil.nmemFree(nativeInt);
        MemoryUtil.nmemFree(nativeClock);
    }
}
