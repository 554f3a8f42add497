package cuelead.song;

import java.io.DataInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;

/**
 * Where the sound of a FLAC file lies: behind its metadata (RFC 9639, section 8) and an ID3 tag, if some program
 * put one in front, and before tags at its end.
 *
 * @param block the bytes of {@code info}; nobody writes to them
 * @param start the file's first byte that can belong to a frame
 * @param end   the one behind the last
 */
@SuppressWarnings("ArrayRecordComponent")
record FlacFile(Path file, FlacInfo info, byte[] block, long start, long end) {
    private static final int TAIL_BYTES = 1 << 16;
    private static final int MARK_BYTES = 4;
    private static final int BLOCK_HEADER_BYTES = 4;

    /** Reads the metadata; empty when they are so damaged that the sound cannot be told. */
    static Optional<FlacFile> of(Path file) throws IOException {
        long end = Files.size(file) - tailBytes(file);
        try (DataInputStream in = new DataInputStream(Files.newInputStream(file))) {
            long infoAt = (long) tagBytes(file) + MARK_BYTES + BLOCK_HEADER_BYTES;
            in.skipNBytes(infoAt - BLOCK_HEADER_BYTES);
            boolean isLast = in.readUnsignedByte() >> 7 == 1;
            in.skipNBytes(BLOCK_HEADER_BYTES - 1);
            byte[] block = in.readNBytes(FlacInfo.BYTES);
            if (block.length < FlacInfo.BYTES) {
                return Optional.empty();
            }
            long behind = infoAt + FlacInfo.BYTES;
            long start = isLast ? behind : skipOthers(in, behind, end);
            return FlacInfo.of(block).map(info -> new FlacFile(file, info, block, start, end));
        } catch (EOFException short_) {
            return Optional.empty();
        }
    }

    /** The undamaged frames. */
    FlacFrames frames() throws IOException {
        InputStream in = Files.newInputStream(file);
        in.skipNBytes(start);
        return new FlacFrames(in, end - start, info, block);
    }

    /** Tags and pictures; where their lengths are damaged, frames are looked for among them. */
    private static long skipOthers(DataInputStream in, long from, long end) throws IOException {
        long at = from;
        boolean isLast = false;
        while (!isLast && at + BLOCK_HEADER_BYTES <= end) {
            int header = in.readInt();
            isLast = header < 0;
            at += BLOCK_HEADER_BYTES + (header & 0xff_ffff);
            if (at > end) {
                return from;
            }
            in.skipNBytes(header & 0xff_ffff);
        }
        return isLast ? at : from;
    }

    private static int tagBytes(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return Mp3Edges.start(in.readNBytes(Content.HEAD_BYTES), Integer.MAX_VALUE);
        }
    }

    private static int tailBytes(Path file) throws IOException {
        try (RandomAccessFile in = new RandomAccessFile(file.toFile(), "r")) {
            byte[] tail = new byte[(int) Math.min(TAIL_BYTES, in.length())];
            in.seek(in.length() - tail.length);
            in.readFully(tail);
            return tail.length - Mp3Edges.end(tail);
        }
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof FlacFile that
                && file.equals(that.file)
                && Arrays.equals(block, that.block)
                && start == that.start
                && end == that.end;
    }

    @Override
    public int hashCode() {
        return file.hashCode();
    }
}
