package cuelead.song;

import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;

/**
 * The undamaged frames of a FLAC file and nothing else, as a stream that begins with the shortest of metadata. A
 * frame counts as undamaged when its header's and its own check sum are right and when it does not go back in
 * time; what lies between such frames is left out. So a decoder behind this never meets damage.
 */
final class FlacFrames extends InputStream {
    private static final int LEAST_FRAME_BYTES = 8;
    private static final int LEAST_WINDOW_BYTES = 1 << 17;

    private final InputStream in;
    private final FlacInfo info;
    private final byte[] window;
    private long bytesLeft;
    private int from;
    private int handedTo;
    private int frameEnd;
    private int filledTo;
    private long nextFirstFrame;

    /**
     * @param in        at or before the first frame; closed with this stream
     * @param byteCount how many of its bytes may hold frames
     * @param block     the bytes of {@code info}
     */
    FlacFrames(InputStream in, long byteCount, FlacInfo info, byte[] block) {
        this.in = in;
        this.bytesLeft = byteCount;
        this.info = info;
        this.window = new byte[Math.max(LEAST_WINDOW_BYTES, 2 * (info.limitBytes() + FlacHeader.MOST_BYTES))];
        byte[] mark = {'f', 'L', 'a', 'C', (byte) 0x80, 0, 0, FlacInfo.BYTES};
        System.arraycopy(mark, 0, window, 0, mark.length);
        System.arraycopy(block, 0, window, mark.length, FlacInfo.BYTES);
        frameEnd = mark.length + FlacInfo.BYTES;
        filledTo = frameEnd;
    }

    /** Goes on to the end of the file without decoding. */
    long countFrames() throws IOException {
        while (findFrame()) {
            handedTo = frameEnd;
        }
        return nextFirstFrame;
    }

    @Override
    public int read() throws IOException {
        byte[] one = new byte[1];
        return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
    }

    @Override
    public int read(byte[] bytes, int offset, int count) throws IOException {
        if (handedTo == frameEnd && !findFrame()) {
            return -1;
        }
        int run = Math.min(count, frameEnd - handedTo);
        System.arraycopy(window, handedTo, bytes, offset, run);
        handedTo += run;
        return run;
    }

    /** Finds the next undamaged frame behind the last one; false at the end of the file. */
    private boolean findFrame() throws IOException {
        from = frameEnd;
        fill();
        while (from < filledTo) {
            Optional<FlacHeader> header =
                    FlacHeader.at(window, from, filledTo, info).filter(h -> h.firstFrame() >= nextFirstFrame);
            int end = header.isPresent() ? endOfFrame() : 0;
            if (end > 0) {
                nextFirstFrame = header.get().firstFrame() + header.get().blockFrames();
                handedTo = from;
                frameEnd = end;
                return true;
            }
            from++;
            fill();
        }
        handedTo = from;
        frameEnd = from;
        return false;
    }

    /** The end of the frame that begins here, by its check sum; 0 when it is damaged. */
    private int endOfFrame() {
        int most = (int) Math.min(filledTo, (long) from + info.limitBytes());
        int sum = 0;
        int summedTo = from;
        for (int at = from + LEAST_FRAME_BYTES; at <= most; at++) {
            boolean isEnd =
                    at == filledTo || FlacHeader.at(window, at, filledTo, info).isPresent();
            if (isEnd) {
                sum = FlacSums.frame(sum, window, summedTo, at);
                summedTo = at;
                if (sum == 0) {
                    return at;
                }
            }
        }
        return 0;
    }

    /** Sees to it that the longest frame and a header behind it are in the window. */
    private void fill() throws IOException {
        int wanted = info.limitBytes() + FlacHeader.MOST_BYTES;
        if (filledTo - from >= wanted || bytesLeft == 0) {
            return;
        }
        System.arraycopy(window, from, window, 0, filledTo - from);
        filledTo -= from;
        from = 0;
        int room = (int) Math.min(bytesLeft, window.length - filledTo);
        int got = in.readNBytes(window, filledTo, room);
        filledTo += got;
        bytesLeft = got < room ? 0 : bytesLeft - got;
    }

    @Override
    public void close() throws IOException {
        in.close();
    }
}
