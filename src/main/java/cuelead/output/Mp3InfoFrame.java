package cuelead.output;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;

/**
 * The first frame of an MP3 file, silent, which tells players how long the sound is and how much silence the encoder
 * put before and behind it ("Mp3 Info Tag", revision 1, of the LAME project, with the fields of the older Xing tag:
 * MPEG frames, bytes, seek table). The encoder begins with an empty frame, whose place it takes.
 */
final class Mp3InfoFrame {
    private static final int HEADER_BYTES = 4;
    private static final int HAS_FRAMES_BYTES_AND_SEEK_TABLE = 7;
    private static final int SEEK_POINTS = 100;

    /** The bit of the third byte of a header that makes a frame a byte longer. */
    private static final int PADDING_BIT = 2;

    /** Nine letters: the encoder is a port of this version. */
    private static final String ENCODER = "LAME3.98 ";

    private static final int STEADY_BIT_RATE = 1;

    /** What this encoder puts before the sound; decoders add 529 of their own. */
    private static final int DELAY_FRAMES = 576;

    private final Mp3Layout layout;
    private final byte[] firstHeader = new byte[HEADER_BYTES];
    private final Crc16 streamSum = new Crc16();
    private long soundFrames;
    private long streamBytes;

    Mp3InfoFrame(Mp3Layout layout) {
        this.layout = layout;
    }

    private int byteCount() {
        return (int) layout.frameBytes();
    }

    /** So many frames of sound were given to the encoder. */
    void countSound(int frames) {
        soundFrames += frames;
    }

    /** These bytes came from it. */
    void countStream(byte[] encoded, int count) {
        if (streamBytes == 0 && count >= HEADER_BYTES) {
            System.arraycopy(encoded, 0, firstHeader, 0, HEADER_BYTES);
        }
        int ofFirstFrame = (int) Math.min(count, Math.max(0, byteCount() - streamBytes));
        streamSum.add(encoded, ofFirstFrame, count - ofFirstFrame);
        streamBytes += count;
    }

    /** The frame, when all was counted: to be written over the first one. */
    ByteBuffer bytes() {
        int mpegFrames = (int) Math.round(streamBytes / layout.frameBytes()) - 1;
        int wholeBytes = Math.toIntExact(streamBytes);
        ByteBuffer bytes = ByteBuffer.allocate(byteCount());
        bytes.put(firstHeader).put(2, (byte) (firstHeader[2] & ~PADDING_BIT));
        bytes.position(HEADER_BYTES + layout.sideInfoBytes());
        bytes.put("Info".getBytes(StandardCharsets.ISO_8859_1)).putInt(HAS_FRAMES_BYTES_AND_SEEK_TABLE);
        bytes.putInt(mpegFrames).putInt(wholeBytes);
        for (int point = 0; point < SEEK_POINTS; point++) {
            bytes.put((byte) (256 * point / SEEK_POINTS));
        }
        putEncoder(bytes, mpegFrames, wholeBytes);
        return bytes.rewind();
    }

    private void putEncoder(ByteBuffer bytes, int mpegFrames, int wholeBytes) {
        bytes.put(ENCODER.getBytes(StandardCharsets.ISO_8859_1)).put((byte) STEADY_BIT_RATE);
        bytes.put(new byte[10]); // low pass, peak, gains and flags: not told
        bytes.put((byte) layout.kilobits());
        int padding = (int) ((long) mpegFrames * layout.framesInFrame() - DELAY_FRAMES - soundFrames);
        int both = DELAY_FRAMES << 12 | padding;
        bytes.put((byte) (both >> 16)).putShort((short) both);
        bytes.putInt(0); // how it was made, gain and preset: not told
        bytes.putInt(wholeBytes).putShort(streamSum.value());
        Crc16 ownSum = new Crc16();
        byte[] before = new byte[bytes.position()];
        bytes.get(0, before);
        ownSum.add(before, 0, before.length);
        bytes.putShort(ownSum.value());
    }
}
