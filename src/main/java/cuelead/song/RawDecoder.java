package cuelead.song;

import cuelead.time.SampleRate;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;

/** Uncompressed samples from a stream that stands at the first of them. */
final class RawDecoder implements Decoder {
    private static final int BLOCK_FRAMES = 4_096;

    private final InputStream in;
    private final RawLayout layout;
    private final FoldDown foldDown;
    private final long lengthFrames;
    private final ByteBuffer bytes;
    private final float[] samples;
    private long framesDone;

    /**
     * @param in           at the first sample; closed with this decoder
     * @param lengthFrames what this decoder gives in all; silence where the stream ends before
     */
    RawDecoder(InputStream in, RawLayout layout, long lengthFrames) {
        this.in = in;
        this.layout = layout;
        this.lengthFrames = lengthFrames;
        this.foldDown = new FoldDown(layout.channels());
        this.bytes = ByteBuffer.allocate(BLOCK_FRAMES * layout.frameBytes()).order(layout.order());
        this.samples = new float[BLOCK_FRAMES * layout.channels()];
    }

    /** Opens a file whose header was read; a file that ends before its header says so is filled with silence. */
    static RawDecoder open(Path file, RawLayout layout, Findings findings) throws IOException {
        long bytesThere = Math.max(0, Files.size(file) - layout.dataOffset());
        long framesThere = bytesThere / layout.frameBytes();
        long lengthFrames =
                layout.dataBytes() == RawLayout.TO_THE_END ? framesThere : layout.dataBytes() / layout.frameBytes();
        if (framesThere < lengthFrames) {
            findings.endsEarly(layout.rate(), framesThere, lengthFrames);
        }
        InputStream in = new BufferedInputStream(Files.newInputStream(file));
        in.skipNBytes(Math.min(layout.dataOffset(), Files.size(file)));
        return new RawDecoder(in, layout, lengthFrames);
    }

    @Override
    public SampleRate rate() {
        return layout.rate();
    }

    @Override
    public long lengthFrames() {
        return lengthFrames;
    }

    @Override
    public int read(float[] stereo, int frames) throws IOException {
        int done = 0;
        int wanted = (int) Math.min(frames, lengthFrames - framesDone);
        while (done < wanted) {
            int run = Math.min(wanted - done, BLOCK_FRAMES);
            readBlock(run);
            foldDown.fold(samples, stereo, done, run);
            done += run;
        }
        framesDone += done;
        return done;
    }

    private void readBlock(int frames) throws IOException {
        int byteCount = frames * layout.frameBytes();
        int got = in.readNBytes(bytes.array(), 0, byteCount);
        int whole = got / layout.frameBytes() * layout.channels();
        SampleFormat format = layout.format();
        for (int i = 0; i < whole; i++) {
            samples[i] = format.sample(bytes, i * format.byteCount());
        }
        Arrays.fill(samples, whole, frames * layout.channels(), 0f);
    }

    @Override
    public void close() throws IOException {
        in.close();
    }
}
