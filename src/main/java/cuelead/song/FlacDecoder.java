package cuelead.song;

import cuelead.time.SampleRate;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import org.jflac.FLACDecoder;
import org.jflac.FrameListener;
import org.jflac.frame.Frame;
import org.jflac.metadata.Metadata;
import org.jflac.metadata.StreamInfo;

/** FLAC; each frame knows its place, so that a lost one leaves a silence and shifts nothing. */
final class FlacDecoder implements Decoder {
    private final InputStream in;
    private final FLACDecoder decoder;
    private final SampleRate rate;
    private final long lengthFrames;
    private final FoldDown foldDown;
    private final float scale;
    private final Findings findings;
    private final float[] one;
    private final Errors errors = new Errors();

    private Optional<Frame> frame = Optional.empty();
    private long frameStart;
    private boolean hasEnded;
    private long framesDone;

    private FlacDecoder(InputStream in, FLACDecoder decoder, long lengthFrames, Findings findings) {
        StreamInfo info = decoder.getStreamInfo();
        this.in = in;
        this.decoder = decoder;
        this.rate = new SampleRate(info.getSampleRate());
        this.lengthFrames = lengthFrames;
        this.foldDown = new FoldDown(info.getChannels(), FoldDown.Order.WAVE);
        this.scale = (float) Math.scalb(1.0, 1 - info.getBitsPerSample());
        this.findings = findings;
        this.one = new float[info.getChannels()];
        decoder.addFrameListener(errors);
    }

    /** Opens a file; empty when there is no sound that can be read */
    static Optional<Decoder> open(Path file, Findings findings) throws IOException {
        FlacDecoder opened = start(file, 0, findings);
        StreamInfo info = opened.decoder.getStreamInfo();
        long told = info.getTotalSamples();
        if (told > 0) {
            return Optional.of(new FlacDecoder(opened.in, opened.decoder, told, findings));
        }
        long counted = opened.countToTheEnd();
        opened.close();
        return counted == 0 ? Optional.empty() : Optional.of(start(file, counted, findings));
    }

    private static FlacDecoder start(Path file, long lengthFrames, Findings findings) throws IOException {
        InputStream in = new BufferedInputStream(Files.newInputStream(file), 1 << 16);
        FLACDecoder decoder = new FLACDecoder(in);
        decoder.readMetadata();
        return new FlacDecoder(in, decoder, lengthFrames, findings);
    }

    /** For files written to a pipe, which do not tell their length. */
    private long countToTheEnd() throws IOException {
        long frames = 0;
        for (Optional<Frame> next = next(); next.isPresent(); next = next()) {
            frames = next.get().header.sampleNumber + next.get().header.blockSize;
        }
        return frames;
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
    public int read(float[] stereo, int frames) throws IOException {
        int wanted = (int) Math.min(frames, lengthFrames - framesDone);
        int done = 0;
        while (done < wanted) {
            int run = Math.min(wanted - done, framesInReach());
            if (frame.isPresent() && framesDone >= frameStart) {
                copy(stereo, done, run);
            } else {
                Arrays.fill(stereo, 2 * done, 2 * (done + run), 0f);
            }
            done += run;
            framesDone += run;
        }
        return done;
    }

    /** Frames from here to the end of the decoded frame, or of the silence in front of it; at least 1. */
    private int framesInReach() throws IOException {
        while (!hasEnded && (frame.isEmpty() || framesDone >= frameStart + frame.get().header.blockSize)) {
            errors.clear();
            frame = next().filter(this::belongsHere);
            if (frame.isPresent()) {
                frameStart = frame.get().header.sampleNumber;
                report();
            } else if (decoder.isEOF()) {
                hasEnded = true;
                findings.endsEarly(rate, framesDone, lengthFrames);
            }
        }
        long reach = hasEnded
                ? lengthFrames
                : framesDone < frameStart ? frameStart : frameStart + frame.get().header.blockSize;
        return (int) Math.min(Integer.MAX_VALUE, reach - framesDone);
    }

    private boolean belongsHere(Frame next) {
        return next.header.channels == one.length && next.header.sampleNumber < lengthFrames;
    }

    private void report() {
        if (frameStart > framesDone) {
            findings.hole(rate, framesDone, frameStart - framesDone);
        } else if (!errors.isEmpty()) {
            findings.hole(rate, framesDone, frame.orElseThrow().header.blockSize);
        }
    }

    private Optional<Frame> next() throws IOException {
        try {
            return Optional.ofNullable(decoder.readNextFrame());
        } catch (ArrayIndexOutOfBoundsException damaged) {
            return Optional.empty();
        }
    }

    private void copy(float[] stereo, int stereoFrame, int frames) {
        int from = (int) (framesDone - frameStart);
        for (int i = 0; i < frames; i++) {
            for (int c = 0; c < one.length; c++) {
                one[c] = decoder.getChannelData()[c].getOutput()[from + i] * scale;
            }
            foldDown.fold(one, stereo, stereoFrame + i, 1);
        }
    }

    @Override
    public void close() throws IOException {
        in.close();
    }

    /** The library silences a frame whose check sum is wrong, and says so only here. */
    private static final class Errors implements FrameListener {
        private boolean isEmpty = true;

        void clear() {
            isEmpty = true;
        }

        boolean isEmpty() {
            return isEmpty;
        }

        @Override
        public void processError(String message) {
            isEmpty = false;
        }

        @Override
        public void processMetadata(Metadata metadata) {
            // Tags and pictures are no sound.
        }

        @Override
        public void processFrame(Frame decoded) {
            // Frames are pulled, not pushed.
        }
    }
}
