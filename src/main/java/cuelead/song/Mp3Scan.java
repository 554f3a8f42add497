package cuelead.song;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A walk over the frame headers of an MP3 file, which decodes nothing: where each frame lies, and where bytes
 * stand that are no frames.
 */
final class Mp3Scan {
    /** So many headers in a row, each where the one before says, are no accident. */
    private static final int SURE_FRAMES = 3;

    /**
     * Bytes that are no frame.
     *
     * @param beforeFrame how many whole frames come before it
     * @param bytes       how long it is
     * @param cutFrames   1 when the frame in front of it was cut short (and is lost), else 0
     */
    record Hole(int beforeFrame, int bytes, int cutFrames) {}

    private final byte[] bytes;
    private final int end;
    private final List<Hole> holes = new ArrayList<>();
    private int[] offsets = new int[1_024];
    private int frames;
    private boolean isCutShort;
    private Optional<Mp3Header> first = Optional.empty();

    private Mp3Scan(byte[] bytes, int end) {
        this.bytes = bytes;
        this.end = end;
    }

    /** Walks from the first frame on; {@code searchBytes} is how far from {@code start} that may lie. */
    static Mp3Scan of(byte[] bytes, int start, int end, int searchBytes) {
        Mp3Scan scan = new Mp3Scan(bytes, end);
        int at = scan.nextSure(start, (int) Math.min(end, (long) start + searchBytes));
        if (at < end) {
            scan.walk(at);
        }
        return scan;
    }

    /** The header of the first frame; empty when there are no frames at all. */
    Optional<Mp3Header> first() {
        return first;
    }

    /** How many whole frames there are. */
    int frames() {
        return frames;
    }

    /** Where a whole frame begins in the file. */
    int offset(int frame) {
        return offsets[frame];
    }

    /** Holes between frames, in order. */
    List<Hole> holes() {
        return List.copyOf(holes);
    }

    /** Whether the file ends within a frame. */
    boolean isCutShort() {
        return isCutShort;
    }

    private void walk(int start) {
        int at = start;
        first = Mp3Header.at(bytes, at, end);
        while (at < end) {
            Optional<Mp3Header> header = headerAt(at);
            if (header.isEmpty()) {
                at = overHole(at, at, 0);
                continue;
            }
            int next = at + header.get().byteCount();
            if (next > end) {
                isCutShort = true;
                return;
            }
            if (next == end || headerAt(next).isPresent()) {
                add(at);
                at = next;
            } else {
                at = pastDoubtful(at, next);
            }
        }
    }

    /** A frame that no other follows where it says: whole before a hole, or cut short by one. */
    private int pastDoubtful(int at, int next) {
        int sure = nextSure(at + 1, end);
        if (sure >= next) {
            add(at);
            return sure < end ? overHole(next, sure, 0) : end;
        }
        return overHole(at, sure, 1);
    }

    private int overHole(int from, int sureOrFrom, int cutFrames) {
        int to = sureOrFrom > from ? sureOrFrom : nextSure(from + 1, end);
        if (to < end) {
            holes.add(new Hole(frames, to - from, cutFrames));
        }
        return to;
    }

    private Optional<Mp3Header> headerAt(int at) {
        return Mp3Header.at(bytes, at, end).filter(h -> first.isEmpty() || h.continues(first.get()));
    }

    /** The next place from which several frames follow each other; the end of the search when there is none. */
    private int nextSure(int from, int to) {
        for (int at = from; at < to; at++) {
            if (bytes[at] == (byte) 0xff && isSure(at)) {
                return at;
            }
        }
        return end;
    }

    private boolean isSure(int start) {
        int at = start;
        Optional<Mp3Header> before = headerAt(start);
        for (int i = 1; i < SURE_FRAMES && before.isPresent(); i++) {
            at += before.get().byteCount();
            if (at == end) {
                return true;
            }
            Mp3Header last = before.get();
            before = headerAt(at).filter(h -> h.continues(last));
        }
        return before.isPresent();
    }

    private void add(int at) {
        if (frames == offsets.length) {
            offsets = Arrays.copyOf(offsets, 2 * frames);
        }
        offsets[frames++] = at;
    }
}
