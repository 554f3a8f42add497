package cuelead.song;

import cuelead.time.SampleRate;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import org.jflac.FLACDecoder;
import org.jflac.frame.Frame;

/**
 * FLAC; each frame knows its place, so that a lost one leaves a silence and shifts nothing. The library is handed
 * undamaged frames only: on others it may stop, print or never come back.
 */
final class FlacDecoder implements Decoder {
    private final FlacFrames in;
    private final FLACDecoder decoder;
    private final SampleRate rate;
    private final long lengthFrames;
    private final FoldDown foldDown;
    private final float scale;
    private final Findings findings;
    private final float[] one;

    private Optional<Frame> frame = Optional.empty();
    private long frameStart;
    private boolean hasEnded;
    private long framesDone;

    private FlacDecoder(FlacFile file, long lengthFrames, Findings findings) throws IOException {
        FlacInfo info = file.info();
        this.in = file.frames();
        this.decoder = new FLACDecoder(in);
        this.rate = new SampleRate(info.rateHz());
        this.lengthFrames = lengthFrames;
        this.foldDown = new FoldDown(info.channels());
        this.scale = (float) Math.scalb(1.0, 1 - info.bits());
        this.findings = findings;
        this.one = new float[info.channels()];
        decoder.readMetadata();
    }

    /** Opens a file; empty when there is no sound that can be read */
    static Optional<Decoder> open(Path path, Findings findings) throws IOException {
        Optional<FlacFile> file = FlacFile.of(path);
        if (file.isEmpty()) {
            return Optional.empty();
        }
        long frames = lengthFrames(file.get());
        if (frames == 0) {
            return Optional.empty();
        }
        FlacDecoder opened = new FlacDecoder(file.get(), frames, findings);
        opened.framesInReach();
        if (opened.hasEnded) {
            opened.close();
            return Optional.empty();
        }
        return Optional.of(opened);
    }

    /** A file that was written to a pipe does not tell its length. */
    private static long lengthFrames(FlacFile file) throws IOException {
        if (file.info().lengthFrames() > 0) {
            return file.info().lengthFrames();
        }
        try (FlacFrames frames = file.frames()) {
            return frames.countFrames();
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
        while (!hasEnded && (frame.isEmpty() || framesDone >= frameEnd())) {
            frame = Optional.ofNullable(decoder.readNextFrame());
            if (frame.isPresent()) {
                frameStart = frame.get().header.sampleNumber;
                report();
            } else {
                hasEnded = true;
                findings.endsEarly(rate, framesDone, lengthFrames);
            }
        }
        long reach = hasEnded ? lengthFrames : framesDone < frameStart ? frameStart : frameEnd();
        return (int) Math.min(Integer.MAX_VALUE, reach - framesDone);
    }

    private long frameEnd() {
        return frameStart + frame.orElseThrow().header.blockSize;
    }

    private void report() {
        long missing = Math.min(frameStart, lengthFrames) - framesDone;
        if (missing > 0) {
            findings.hole(rate, framesDone, missing);
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
}
