package cuelead.song;

import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The undamaged pages of an OGG file's first stream (RFC 3533, section 6), by their check sums, and the runs in
 * which they follow each other without a gap.
 */
final class OggPages {
    private static final int HEADER_BYTES = 27;
    private static final int SUM_AT = 22;
    private static final int CONTINUED = 1;
    private static final int LAST = 4;
    /** A piece of a packet of this length goes on in the next piece. */
    private static final int GOES_ON = 255;
    /** x^32 + x^26 + ... + 1, the highest bit first. */
    private static final int POLYNOMIAL = 0x04c1_1db7;

    private static final int[] SUMS = sums();

    /**
     * One page.
     *
     * @param lastFrame the sound's frame at which its last whole packet ends; -1 when none ends here
     */
    private record Page(int from, int to, int flags, long lastFrame, int serial, int sequence) {}

    /**
     * Pages without a gap.
     *
     * @param bytes     an OGG file of its own: the stream's headers and these pages
     * @param lastFrame where the sound of the last of them ends
     */
    @SuppressWarnings("ArrayRecordComponent") // handed over, not kept
    record Run(byte[] bytes, long lastFrame) {}

    private final byte[] file;
    private final List<Page> pages = new ArrayList<>();
    private boolean hasGap;

    private OggPages(byte[] file) {
        this.file = file;
    }

    static OggPages of(byte[] file) {
        OggPages found = new OggPages(file);
        found.scan();
        return found;
    }

    /** Whether pages are missing in the middle, or damaged. */
    boolean isDamaged() {
        return hasGap;
    }

    /** Whether the file goes to the page that is marked as the last. */
    boolean isCutShort() {
        return pages.isEmpty() || (pages.get(pages.size() - 1).flags() & LAST) == 0;
    }

    /** The last frame that any page speaks of. */
    long lastFrame() {
        return pages.stream().mapToLong(Page::lastFrame).max().orElse(0);
    }

    /** The runs of pages with sound, in order; none when the headers are damaged. */
    List<Run> runs() {
        int headers = 0;
        while (headers < pages.size()
                && pages.get(headers).lastFrame() == 0
                && pages.get(headers).sequence() == headers) {
            headers++;
        }
        List<Run> runs = new ArrayList<>();
        int from = headers;
        while (headers > 0 && from < pages.size()) {
            int to = from + 1;
            while (to < pages.size() && follows(pages.get(to - 1), pages.get(to))) {
                to++;
            }
            boolean isFirst = follows(pages.get(headers - 1), pages.get(from)) && from == headers;
            addRun(runs, pages.subList(0, headers), pages.subList(from, to), isFirst);
            from = to;
        }
        return runs;
    }

    private void addRun(List<Run> runs, List<Page> headers, List<Page> run, boolean isFirst) {
        long lastFrame = run.stream().mapToLong(Page::lastFrame).max().orElse(-1);
        // A last page's own length cannot be told from its end where nothing before it is known.
        boolean isOnlyLast = !isFirst && run.size() == 1 && (run.get(0).flags() & LAST) != 0;
        if (lastFrame <= 0 || isOnlyLast) {
            return;
        }
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        headers.forEach(page -> bytes.write(file, page.from(), page.to() - page.from()));
        int begun = 0;
        while (begun < run.size() && (run.get(begun).flags() & CONTINUED) != 0 && !isFirst) {
            byte[] rest = withoutContinued(run.get(begun++));
            bytes.writeBytes(rest);
            if (rest.length > 0) {
                break;
            }
        }
        run.subList(begun, run.size()).forEach(page -> bytes.write(file, page.from(), page.to() - page.from()));
        runs.add(new Run(bytes.toByteArray(), lastFrame));
    }

    /** A page without the end of a packet whose beginning is lost; empty when nothing else is in it. */
    private byte[] withoutContinued(Page page) {
        int pieces = file[page.from() + HEADER_BYTES - 1] & 0xff;
        int piecesAt = page.from() + HEADER_BYTES;
        int dropped = 0;
        int droppedBytes = 0;
        boolean goesOn = true;
        while (goesOn && dropped < pieces) {
            int size = file[piecesAt + dropped++] & 0xff;
            droppedBytes += size;
            goesOn = size == GOES_ON;
        }
        if (dropped == pieces) {
            return new byte[0];
        }
        byte[] rest = Arrays.copyOf(
                Arrays.copyOfRange(file, page.from(), page.to()), page.to() - page.from() - dropped - droppedBytes);
        rest[5] &= ~CONTINUED;
        rest[HEADER_BYTES - 1] = (byte) (pieces - dropped);
        System.arraycopy(file, piecesAt + dropped, rest, HEADER_BYTES, pieces - dropped);
        int bodyAt = HEADER_BYTES + pieces - dropped;
        System.arraycopy(file, piecesAt + pieces + droppedBytes, rest, bodyAt, rest.length - bodyAt);
        int sum = sum(rest, 0, rest.length);
        for (int i = 0; i < Integer.BYTES; i++) {
            rest[SUM_AT + i] = (byte) (sum >> (8 * i));
        }
        return rest;
    }

    private static boolean follows(Page before, Page page) {
        return page.sequence() == before.sequence() + 1;
    }

    private void scan() {
        int at = 0;
        int end = 0;
        while (at + HEADER_BYTES <= file.length) {
            int next = endOfPage(at);
            if (next == 0) {
                at++;
                continue;
            }
            Page page = new Page(at, next, file[at + 5], int64(at + 6), (int) int32(at + 14), (int) int32(at + 18));
            hasGap |= at != end;
            if (pages.isEmpty() || pages.get(0).serial() == page.serial()) {
                hasGap |= !pages.isEmpty() && !follows(pages.get(pages.size() - 1), page);
                pages.add(page);
            }
            at = next;
            end = next;
        }
    }

    /** The end of the page that begins here; 0 when none does or when it is damaged. */
    private int endOfPage(int at) {
        if (file[at] != 'O' || file[at + 1] != 'g' || file[at + 2] != 'g' || file[at + 3] != 'S') {
            return 0;
        }
        int pieces = file[at + HEADER_BYTES - 1] & 0xff;
        int end = at + HEADER_BYTES + pieces;
        for (int i = 0; i < pieces && end <= file.length; i++) {
            end += file[at + HEADER_BYTES + i] & 0xff;
        }
        return end <= file.length && sum(file, at, end) == (int) int32(at + SUM_AT) ? end : 0;
    }

    /** The check sum of a page, its own four bytes counting as 0. */
    private static int sum(byte[] bytes, int from, int to) {
        int sum = 0;
        for (int i = from; i < to; i++) {
            int value = i >= from + SUM_AT && i < from + SUM_AT + Integer.BYTES ? 0 : bytes[i] & 0xff;
            sum = sum << 8 ^ SUMS[sum >>> 24 ^ value];
        }
        return sum;
    }

    private static int[] sums() {
        int[] sums = new int[256];
        for (int value = 0; value < sums.length; value++) {
            int sum = value << 24;
            for (int bit = 0; bit < 8; bit++) {
                sum = sum < 0 ? sum << 1 ^ POLYNOMIAL : sum << 1;
            }
            sums[value] = sum;
        }
        return sums;
    }

    private long int32(int at) {
        return (file[at] & 0xffL)
                | (file[at + 1] & 0xffL) << 8
                | (file[at + 2] & 0xffL) << 16
                | (file[at + 3] & 0xffL) << 24;
    }

    private long int64(int at) {
        return int32(at) | int32(at + 4) << 32;
    }
}
