package cuelead.song;

import static org.lwjgl.stb.STBVorbis.stb_vorbis_close;
import static org.lwjgl.stb.STBVorbis.stb_vorbis_get_info;
import static org.lwjgl.stb.STBVorbis.stb_vorbis_get_samples_float_interleaved;
import static org.lwjgl.stb.STBVorbis.stb_vorbis_open_memory;
import static org.lwjgl.stb.STBVorbis.stb_vorbis_stream_length_in_samples;

import cuelead.time.SampleRate;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.FloatBuffer;
import java.nio.IntBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import org.lwjgl.stb.STBVorbisInfo;
import org.lwjgl.system.MemoryStack;
import org.lwjgl.system.MemoryUtil;

/** OGG Vorbis of one or two channels, by the native stb_vorbis (which garbles more); the file's bytes lie outside the Java heap. */
final class OggDecoder implements Decoder {
    private static final int BLOCK_FRAMES = 4_096;

    private final ByteBuffer file;
    private final long handle;
    private final SampleRate rate;
    private final long lengthFrames;
    private final FoldDown foldDown;
    private final FloatBuffer block;
    private final float[] samples;
    private final Findings findings;
    private long framesDone;
    private boolean isCutShort;

    private OggDecoder(
            ByteBuffer file, long handle, SampleRate rate, int channels, long lengthFrames, Findings findings) {
        this.file = file;
        this.handle = handle;
        this.rate = rate;
        this.lengthFrames = lengthFrames;
        this.foldDown = new FoldDown(channels);
        this.block = MemoryUtil.memAllocFloat(BLOCK_FRAMES * channels);
        this.samples = new float[BLOCK_FRAMES * channels];
        this.findings = findings;
    }

    /** Opens a file; empty when there is no sound that can be read */
    static Optional<Decoder> open(Path path, Findings findings) throws IOException {
        ByteBuffer file = readAll(path);
        try (MemoryStack stack = MemoryStack.stackPush()) {
            IntBuffer error = stack.mallocInt(1);
            long handle = stb_vorbis_open_memory(file, error, null);
            if (handle == MemoryUtil.NULL) {
                MemoryUtil.memFree(file);
                return Optional.empty();
            }
            STBVorbisInfo info = stb_vorbis_get_info(handle, STBVorbisInfo.malloc(stack));
            int frames = stb_vorbis_stream_length_in_samples(handle);
            if (frames <= 0 || info.sample_rate() < 4_000 || info.sample_rate() > 384_000) {
                stb_vorbis_close(handle);
                MemoryUtil.memFree(file);
                return Optional.empty();
            }
            SampleRate rate = new SampleRate(info.sample_rate());
            return Optional.of(new OggDecoder(file, handle, rate, info.channels(), frames, findings));
        }
    }

    private static ByteBuffer readAll(Path path) throws IOException {
        try (FileChannel channel = FileChannel.open(path)) {
            ByteBuffer bytes = MemoryUtil.memAlloc(Math.toIntExact(channel.size()));
            while (bytes.hasRemaining() && channel.read(bytes) >= 0) {
                // reads on until the buffer is full or the file ends
            }
            return bytes.flip();
        }
    }

    @Override
    public SampleRate rate() {
        return rate;
    }

    @Override
    public long lengthFrames() {
        return lengthFrames;
    }

    @Override
    public int read(float[] stereo, int frames) {
        int wanted = (int) Math.min(frames, lengthFrames - framesDone);
        int done = 0;
        while (done < wanted) {
            int run = Math.min(wanted - done, BLOCK_FRAMES);
            fillBlock(run);
            foldDown.fold(samples, stereo, done, run);
            done += run;
            framesDone += run;
        }
        return done;
    }

    private void fillBlock(int frames) {
        int channels = foldDown.channels();
        int got = 0;
        while (got < frames && !isCutShort) {
            block.position(0).limit((frames - got) * channels);
            int run = stb_vorbis_get_samples_float_interleaved(handle, channels, block);
            block.get(0, samples, got * channels, run * channels);
            got += run;
            if (run == 0) {
                isCutShort = true;
                findings.endsEarly(rate, framesDone + got, lengthFrames);
            }
        }
        Arrays.fill(samples, got * channels, frames * channels, 0f);
    }

    @Override
    public void close() {
        stb_vorbis_close(handle);
        MemoryUtil.memFree(block);
        MemoryUtil.memFree(file);
    }
}
