package cuelead.output;

import static org.lwjgl.openal.AL10.AL_BUFFER;
import static org.lwjgl.openal.AL10.AL_SOURCE_STATE;
import static org.lwjgl.openal.AL10.AL_STOPPED;
import static org.lwjgl.openal.AL10.AL_TRUE;
import static org.lwjgl.openal.AL10.alSourcePause;
import static org.lwjgl.openal.AL10.alSourcePlay;
import static org.lwjgl.openal.AL10.alSourceStop;
import static org.lwjgl.openal.AL10.alSourcei;

import cuelead.sound.Sound;
import cuelead.time.SampleRate;
import java.nio.FloatBuffer;
import java.util.Arrays;
import org.lwjgl.openal.AL10;
import org.lwjgl.openal.EXTFloat32;
import org.lwjgl.openal.SOFTDirectChannels;
import org.lwjgl.openal.SOFTSourceLatency;
import org.lwjgl.system.MemoryUtil;

/**
 * One OpenAL source that is fed from a {@link Track} through a queue of a few long buffers. All is known ahead,
 * so a deep queue costs nothing; on a new track it is thrown away and filled again at once. After the end of the
 * track silence follows until its last frame has been heard. A second source plays silence always, so that no
 * device falls asleep.
 *
 * <p>Belongs to one thread, whose OpenAL context it uses. {@link #pump} is realtime-safe: values go to and from
 * the library through native memory that is reserved once.
 */
final class AlStream implements AutoCloseable {
    private static final int BUFFERS = 4;
    private static final int BUFFER_FRAMES = 4_800;
    private static final long UNKNOWN = Long.MAX_VALUE;

    private final SampleRate rate;
    private final int source = AL10.alGenSources();
    private final int[] buffers = new int[BUFFERS];
    private final int silentSource = AL10.alGenSources();
    private final int silentBuffer = AL10.alGenBuffers();
    private final float[] block = new float[BUFFER_FRAMES * Sound.CHANNELS];
    private final FloatBuffer nativeBlock = MemoryUtil.memCallocFloat(block.length);
    private final long nativeInt = MemoryUtil.nmemCalloc(1, Integer.BYTES);
    private final long nativeOffsets = MemoryUtil.nmemCalloc(2, Double.BYTES);

    private Track track = new Track((interleaved, frames) -> 0, 0);
    private boolean isRunning;
    private boolean isPaused;
    private long filledFrames;
    private long unqueuedFrames;
    private long lengthFrames;
    private int dropOuts;

    AlStream(SampleRate rate) {
        this.rate = rate;
        AL10.alGenBuffers(buffers);
        alSourcei(source, SOFTDirectChannels.AL_DIRECT_CHANNELS_SOFT, AL_TRUE);
        putBlockInto(silentBuffer);
        alSourcei(silentSource, AL_BUFFER, silentBuffer);
        alSourcei(silentSource, AL10.AL_LOOPING, AL_TRUE);
        alSourcePlay(silentSource);
    }

    /** Stops what sounds and begins another track. */
    void begin(Track next) {
        stop();
        track = next;
        filledFrames = 0;
        unqueuedFrames = 0;
        lengthFrames = UNKNOWN;
        for (int buffer : buffers) {
            fillAndQueue(buffer);
        }
        isRunning = true;
        if (!isPaused) {
            alSourcePlay(source);
        }
    }

    /** Silence at once; the rest of the track is forgotten. */
    void stop() {
        isRunning = false;
        alSourceStop(source);
        alSourcei(source, AL_BUFFER, 0);
    }

    void pause() {
        isPaused = true;
        if (isRunning) {
            alSourcePause(source);
        }
    }

    void resume() {
        isPaused = false;
        if (isRunning) {
            alSourcePlay(source);
        }
    }

    /** Goes on after the device came back: what was queued when it went sounds again. */
    void restart() {
        alSourcePlay(silentSource);
        if (isRunning && !isPaused) {
            alSourcePlay(source);
        }
    }

    /** Feeds the queue and says what is heard. To be called several times a buffer. Realtime-safe. */
    void pump() {
        if (!isRunning) {
            return;
        }
        for (int processed = get(AL10.AL_BUFFERS_PROCESSED); processed > 0; processed--) {
            AL10.nalSourceUnqueueBuffers(source, 1, nativeInt);
            unqueuedFrames += BUFFER_FRAMES;
            fillAndQueue(MemoryUtil.memGetInt(nativeInt));
        }
        tellWhatIsHeard();
        if (isRunning && !isPaused && get(AL_SOURCE_STATE) == AL_STOPPED) {
            dropOuts++;
            alSourcePlay(source);
        }
    }

    /** How often the queue ran dry since the beginning. */
    int dropOuts() {
        return dropOuts;
    }

    private void fillAndQueue(int buffer) {
        int got = lengthFrames == UNKNOWN ? track.read(block, BUFFER_FRAMES) : 0;
        if (got < BUFFER_FRAMES) {
            Arrays.fill(block, got * Sound.CHANNELS, block.length, 0);
            lengthFrames = Math.min(lengthFrames, filledFrames + got);
        }
        filledFrames += BUFFER_FRAMES;
        putBlockInto(buffer);
        MemoryUtil.memPutInt(nativeInt, buffer);
        AL10.nalSourceQueueBuffers(source, 1, nativeInt);
    }

    private void putBlockInto(int buffer) {
        nativeBlock.put(0, block);
        AL10.nalBufferData(
                buffer,
                EXTFloat32.AL_FORMAT_STEREO_FLOAT32,
                MemoryUtil.memAddress(nativeBlock),
                block.length * Float.BYTES,
                rate.hz());
    }

    /** The offset counts from the front of the queue; the latency is what the device still holds. */
    private void tellWhatIsHeard() {
        SOFTSourceLatency.nalGetSourcedvSOFT(source, SOFTSourceLatency.AL_SEC_OFFSET_LATENCY_SOFT, nativeOffsets);
        double offsetSeconds = MemoryUtil.memGetDouble(nativeOffsets);
        double latencySeconds = MemoryUtil.memGetDouble(nativeOffsets + Double.BYTES);
        long heard = unqueuedFrames + Math.round((offsetSeconds - latencySeconds) * rate.hz());
        track.heard(Math.max(0, Math.min(heard, lengthFrames)));
        if (heard >= lengthFrames) {
            stop();
            track.end();
        }
    }

    private int get(int what) {
        AL10.nalGetSourcei(source, what, nativeInt);
        return MemoryUtil.memGetInt(nativeInt);
    }

    @Override
    public void close() {
        stop();
        alSourceStop(silentSource);
        AL10.alDeleteSources(source);
        AL10.alDeleteSources(silentSource);
        AL10.alDeleteBuffers(buffers);
        AL10.alDeleteBuffers(silentBuffer);
        MemoryUtil.memFree(nativeBlock);
        MemoryUtil.nmemFree(nativeInt);
        MemoryUtil.nmemFree(nativeOffsets);
    }
}
