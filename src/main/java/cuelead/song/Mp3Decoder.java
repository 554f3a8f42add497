package cuelead.song;

import cuelead.sound.Sound;
import cuelead.time.SampleRate;
import java.io.ByteArrayInputStream;
import java.util.Arrays;
import javazoom.jl.decoder.Bitstream;
import javazoom.jl.decoder.Header;
import javazoom.jl.decoder.JavaLayerException;
import javazoom.jl.decoder.Obuffer;

/**
 * Decodes an MP3 slot by slot. The library is handed runs of whole frames only, and a new one of its decoders
 * after each hole, since it would else shorten the timeline and play what is left in its reservoir.
 */
final class Mp3Decoder implements Decoder {
    /** The library's tables are filled at first use and unguarded. */
    private static final Object TABLES = new Object();

    private final byte[] bytes;
    private final Mp3Timeline timeline;
    private final Findings findings;
    private final Frame frame;

    private Bitstream stream;
    private javazoom.jl.decoder.Decoder decoder;
    private boolean areTablesFilled;
    private boolean isRunning;
    private int slot;
    private int frameAt;
    private long framesDone;

    Mp3Decoder(byte[] bytes, Mp3Timeline timeline, Findings findings) {
        this.bytes = bytes;
        this.timeline = timeline;
        this.findings = findings;
        this.frame = new Frame(timeline.samplesPerFrame(), timeline.isMono());
        this.stream = new Bitstream(new ByteArrayInputStream(new byte[0]));
        this.decoder = new javazoom.jl.decoder.Decoder();
        long skip = timeline.skipFrames();
        this.frameAt = timeline.samplesPerFrame();
        decodeTo(skip);
    }

    @Override
    public SampleRate rate() {
        return timeline.rate();
    }

    @Override
    public long lengthFrames() {
        return timeline.lengthFrames();
    }

    @Override
    public int read(float[] stereo, int frames) {
        int wanted = (int) Math.min(frames, lengthFrames() - framesDone);
        int done = 0;
        while (done < wanted) {
            if (frameAt == timeline.samplesPerFrame()) {
                decodeSlot();
                frameAt = 0;
            }
            int run = Math.min(wanted - done, timeline.samplesPerFrame() - frameAt);
            System.arraycopy(
                    frame.stereo, frameAt * Sound.CHANNELS, stereo, done * Sound.CHANNELS, run * Sound.CHANNELS);
            frameAt += run;
            done += run;
        }
        framesDone += done;
        return done;
    }

    private void decodeTo(long skip) {
        for (long left = skip; left > 0; left -= timeline.samplesPerFrame()) {
            decodeSlot();
            frameAt = (int) Math.min(left, timeline.samplesPerFrame());
        }
    }

    private void decodeSlot() {
        frame.clear_buffer();
        int current = slot++;
        boolean isThere = current < timeline.slots() && timeline.offset(current) != Mp3Timeline.MISSING;
        if (!isThere) {
            isRunning = false;
            return;
        }
        if (!isRunning) {
            startRun(current);
        }
        if (!decodeNext(current) || frame.isTooLoud()) {
            Arrays.fill(frame.stereo, 0f);
            isRunning = false;
            findings.hole(rate(), timeline.songFrame(current), timeline.samplesPerFrame());
        }
    }

    /** A run of frames that touch each other in the file. */
    private void startRun(int first) {
        int last = first;
        while (last + 1 < timeline.slots() && timeline.offset(last + 1) > timeline.offset(last)) {
            last++;
        }
        int end = last + 1 < timeline.slots() ? endOf(last) : Math.min(bytes.length, endOf(last));
        int from = timeline.offset(first);
        stream = new Bitstream(new ByteArrayInputStream(bytes, from, end - from));
        decoder = new javazoom.jl.decoder.Decoder();
        decoder.setOutputBuffer(frame);
        isRunning = true;
    }

    private int endOf(int slotIndex) {
        int at = timeline.offset(slotIndex);
        return at + Mp3Header.at(bytes, at, bytes.length).orElseThrow().byteCount();
    }

    /** Decodes the next frame of the run; false when it cannot be decoded. */
    private boolean decodeNext(int current) {
        try {
            Header header = stream.readFrame();
            if (header == null || header.framesize + Mp3Header.BYTES != endOf(current) - timeline.offset(current)) {
                return false;
            }
            decode(header);
            stream.closeFrame();
            return true;
        } catch (JavaLayerException | ArrayIndexOutOfBoundsException damaged) {
            return false;
        }
    }

    private void decode(Header header) throws JavaLayerException {
        if (areTablesFilled) {
            decoder.decodeFrame(header, stream);
            return;
        }
        synchronized (TABLES) {
            decoder.decodeFrame(header, stream);
        }
        areTablesFilled = true;
    }

    @Override
    public void close() {
        isRunning = false;
    }

    /** Catches one decoded frame as floats, before the library would round and clip them to 16 bits. */
    private static final class Frame extends Obuffer {
        /** The library's full scale. */
        private static final float FULL_SCALE = 32_700f;
        /** No encoder overshoots full scale by 12 dB; a damaged frame can by far more, and would hurt. */
        private static final float LOUDEST = 4;

        private final float[] stereo;
        private final boolean isMono;
        private final int[] at = new int[Sound.CHANNELS];

        Frame(int samplesPerFrame, boolean isMono) {
            this.stereo = new float[samplesPerFrame * Sound.CHANNELS];
            this.isMono = isMono;
        }

        @Override
        public void appendSamples(int channel, float[] samples) {
            int to = at[channel];
            for (float sample : samples) {
                if (to >= stereo.length) {
                    break;
                }
                stereo[to + channel] = sample / FULL_SCALE;
                if (isMono) {
                    stereo[to + 1] = sample / FULL_SCALE;
                }
                to += Sound.CHANNELS;
            }
            at[channel] = to;
        }

        boolean isTooLoud() {
            boolean isTooLoud = false;
            for (float sample : stereo) {
                isTooLoud |= !(Math.abs(sample) <= LOUDEST);
            }
            return isTooLoud;
        }

        @Override
        public void append(int channel, short sample) {
            throw new IllegalStateException("decoded samples come in blocks");
        }

        @Override
        public void clear_buffer() {
            Arrays.fill(at, 0);
            Arrays.fill(stereo, 0f);
        }

        @Override
        public void write_buffer(int unused) {
            // The samples stay here until they are copied out.
        }

        @Override
        public void close() {
            // Holds nothing but memory.
        }

        @Override
        public void set_stop_flag() {
            // Nothing runs that could be stopped.
        }
    }
}
