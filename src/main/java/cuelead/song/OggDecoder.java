package cuelead.song;

import cuelead.time.SampleRate;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * OGG Vorbis of one or two channels, by the native stb_vorbis (which garbles more). Where pages are damaged, each
 * run of good ones between them is decoded by itself and put in its place by where its last page says that it ends.
 */
final class OggDecoder implements Decoder {
    /** A piece of the sound: where it begins and ends on the timeline. */
    private record Piece(OggStream stream, long fromFrame, long toFrame) {}

    private final List<Piece> pieces;
    private final SampleRate rate;
    private final long lengthFrames;
    private final FoldDown foldDown;
    private final float[] samples;
    private final Findings findings;
    private int piece;
    private long framesDone;
    private boolean isCutShort;

    private OggDecoder(List<Piece> pieces, long lengthFrames, Findings findings) {
        OggStream first = pieces.get(0).stream();
        this.pieces = List.copyOf(pieces);
        this.rate = new SampleRate(first.rateHz());
        this.lengthFrames = lengthFrames;
        this.foldDown = new FoldDown(first.channels());
        this.samples = new float[OggStream.BLOCK_FRAMES * first.channels()];
        this.findings = findings;
    }

    /** Opens a file; empty when there is no sound that can be read */
    static Optional<Decoder> open(Path path, Findings findings) throws IOException {
        byte[] file = Files.readAllBytes(path);
        OggPages pages = OggPages.of(file);
        List<Piece> pieces = pages.isDamaged() ? pieces(pages) : whole(file);
        if (pieces.isEmpty()) {
            return Optional.empty();
        }
        long piecesEnd = pieces.get(pieces.size() - 1).toFrame();
        long lengthFrames = pages.isDamaged() ? Math.max(piecesEnd, pages.lastFrame()) : piecesEnd;
        OggDecoder decoder = new OggDecoder(pieces, lengthFrames, findings);
        if (pages.isCutShort()) {
            findings.mayHaveBeenLonger(decoder.rate, lengthFrames);
        }
        decoder.reportHoles();
        return Optional.of(decoder);
    }

    private static List<Piece> whole(byte[] file) {
        Optional<OggStream> stream = OggStream.open(file);
        int frames = stream.map(OggStream::toldFrames).orElse(0);
        boolean isSound =
                stream.isPresent() && frames > 0 && isRate(stream.get().rateHz());
        if (!isSound) {
            stream.ifPresent(OggStream::close);
            return List.of();
        }
        return List.of(new Piece(stream.get(), 0, frames));
    }

    private static List<Piece> pieces(OggPages pages) {
        List<Piece> pieces = new ArrayList<>();
        long end = 0;
        for (OggPages.Run run : pages.runs()) {
            long frames = frames(run);
            Optional<OggStream> stream = frames == 0 ? Optional.empty() : OggStream.open(run.bytes());
            long from = run.lastFrame() - frames;
            if (stream.isPresent() && from >= end) {
                pieces.add(new Piece(stream.get(), from, run.lastFrame()));
                end = run.lastFrame();
            } else {
                stream.ifPresent(OggStream::close);
            }
        }
        return pieces;
    }

    private static long frames(OggPages.Run run) {
        Optional<OggStream> counting = OggStream.open(run.bytes()).filter(stream -> isRate(stream.rateHz()));
        if (counting.isEmpty()) {
            return 0;
        }
        try (OggStream stream = counting.get()) {
            return stream.countFrames();
        }
    }

    private static boolean isRate(int hz) {
        return hz >= 4_000 && hz <= 384_000;
    }

    private void reportHoles() {
        long end = 0;
        for (Piece next : pieces) {
            if (next.fromFrame() > end) {
                findings.hole(rate, end, next.fromFrame() - end);
            }
            end = next.toFrame();
        }
        if (lengthFrames > end) {
            findings.hole(rate, end, lengthFrames - end);
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
            int run = (int) Math.min(Math.min(wanted - done, OggStream.BLOCK_FRAMES), framesInReach());
            fillBlock(run);
            foldDown.fold(samples, stereo, done, run);
            done += run;
            framesDone += run;
        }
        return done;
    }

    /** Frames from here to the end of a piece, or of the hole in front of it; at least 1. */
    private long framesInReach() {
        if (piece < pieces.size() && framesDone == pieces.get(piece).toFrame()) {
            piece++;
        }
        if (piece == pieces.size()) {
            return lengthFrames - framesDone;
        }
        Piece current = pieces.get(piece);
        return (framesDone < current.fromFrame() ? current.fromFrame() : current.toFrame()) - framesDone;
    }

    private void fillBlock(int frames) {
        int channels = foldDown.channels();
        int got = 0;
        boolean isSound =
                piece < pieces.size() && framesDone >= pieces.get(piece).fromFrame();
        while (isSound && got < frames && !isCutShort) {
            int run = pieces.get(piece).stream().read(samples, got * channels, frames - got);
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
        pieces.forEach(each -> each.stream().close());
    }
}
