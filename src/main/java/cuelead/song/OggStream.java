package cuelead.song;

import static org.lwjgl.stb.STBVorbis.stb_vorbis_close;
import static org.lwjgl.stb.STBVorbis.stb_vorbis_get_info;
import static org.lwjgl.stb.STBVorbis.stb_vorbis_get_samples_float_interleaved;
import static org.lwjgl.stb.STBVorbis.stb_vorbis_open_memory;
import static org.lwjgl.stb.STBVorbis.stb_vorbis_stream_length_in_samples;

import java.nio.ByteBuffer;
import java.nio.FloatBuffer;
import java.nio.IntBuffer;
import java.util.Optional;
import org.lwjgl.stb.STBVorbisInfo;
import org.lwjgl.system.MemoryStack;
import org.lwjgl.system.MemoryUtil;

/** One OGG Vorbis stream in the native stb_vorbis; its bytes lie outside the Java heap. Belongs to one thread. */
final class OggStream implements AutoCloseable {
    static final int BLOCK_FRAMES = 4_096;

    /** The first packets behind a hole give nothing; at the end, nothing comes ever after. */
    private static final int MOST_SILENT_PACKETS = 16;

    private final ByteBuffer bytes;
    private final long handle;
    private final int rateHz;
    private final int channels;
    private final FloatBuffer block;

    private OggStream(ByteBuffer bytes, long handle) {
        this.bytes = bytes;
        this.handle = handle;
        try (MemoryStack stack = MemoryStack.stackPush()) {
            STBVorbisInfo info = stb_vorbis_get_info(handle, STBVorbisInfo.malloc(stack));
            this.rateHz = info.sample_rate();
            this.channels = info.channels();
        }
        this.block = MemoryUtil.memAllocFloat(BLOCK_FRAMES * channels);
    }

    /** Empty when there is no sound that can be read. */
    static Optional<OggStream> open(byte[] file) {
        ByteBuffer bytes = MemoryUtil.memAlloc(file.length).put(file).flip();
        try (MemoryStack stack = MemoryStack.stackPush()) {
            IntBuffer error = stack.mallocInt(1);
            long handle = stb_vorbis_open_memory(bytes, error, null);
            if (handle == MemoryUtil.NULL) {
                MemoryUtil.memFree(bytes);
                return Optional.empty();
            }
            return Optional.of(new OggStream(bytes, handle));
        }
    }

    int rateHz() {
        return rateHz;
    }

    int channels() {
        return channels;
    }

    /** The whole length in frames, as the last page tells it. */
    int toldFrames() {
        return stb_vorbis_stream_length_in_samples(handle);
    }

    /**
     * Decodes the next frames.
     *
     * @param samples interleaved, written from the given sample on
     * @param frames  at most {@link #BLOCK_FRAMES}
     * @return how many there were; 0 at the end
     */
    int read(float[] samples, int fromSample, int frames) {
        int got = 0;
        for (int packet = 0; got == 0 && packet < MOST_SILENT_PACKETS; packet++) {
            block.position(0).limit(frames * channels);
            got = stb_vorbis_get_samples_float_interleaved(handle, channels, block);
        }
        block.get(0, samples, fromSample, got * channels);
        return got;
    }

    /** Decodes to the end. */
    long countFrames() {
        float[] samples = new float[BLOCK_FRAMES * channels];
        long frames = 0;
        for (int got = read(samples, 0, BLOCK_FRAMES); got > 0; got = read(samples, 0, BLOCK_FRAMES)) {
            frames += got;
        }
        return frames;
    }

    @Override
    public void close() {
        stb_vorbis_close(handle);
        MemoryUtil.memFree(block);
        MemoryUtil.memFree(bytes);
    }
}
