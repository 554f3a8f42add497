package cuelead.song;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/**
 * What the silent first frame of many MP3 files says about the stream: how many frames follow, and by how much
 * the encoder delayed and padded the sound. The layouts are public ones: "Mp3 info tag" revision 1 of the LAME
 * project, and Fraunhofer's VBRI header.
 *
 * @param frames        MPEG frames that follow, if told
 * @param isGapless     whether delay and padding are told
 * @param delayFrames   PCM frames that the encoder put in front
 * @param paddingFrames PCM frames that the encoder put behind
 */
record Mp3Tag(OptionalInt frames, boolean isGapless, int delayFrames, int paddingFrames) {
    private static final int HAS_FRAMES = 1;
    private static final int HAS_BYTES = 2;
    private static final int HAS_SEEK_TABLE = 4;
    private static final int HAS_QUALITY = 8;
    private static final int SEEK_TABLE_BYTES = 100;
    /** From the encoder's name to its delay. */
    private static final int DELAY_OFFSET = 21;
    /** Encoders whose delay other players honour; others leave these bytes to chance. */
    private static final Set<String> GAPLESS_ENCODERS = Set.of("LAME", "Lavf", "Lavc");

    private static final int VBRI_OFFSET = Mp3Header.BYTES + 32;
    private static final int VBRI_FRAMES_OFFSET = VBRI_OFFSET + 14;

    /** The tag of a frame, if it is a tag frame. */
    static Optional<Mp3Tag> of(byte[] bytes, int at, Mp3Header header) {
        ByteBuffer frame = ByteBuffer.wrap(bytes, at, Math.min(header.byteCount(), bytes.length - at))
                .slice();
        int tagOffset = header.tagOffset();
        if (header.layer() != 3) {
            return Optional.empty();
        }
        if (has(frame, tagOffset, "Xing") || has(frame, tagOffset, "Info")) {
            return Optional.of(xing(frame, tagOffset));
        }
        if (has(frame, VBRI_OFFSET, "VBRI") && frame.limit() >= VBRI_FRAMES_OFFSET + 4) {
            return Optional.of(new Mp3Tag(count(frame.getInt(VBRI_FRAMES_OFFSET)), false, 0, 0));
        }
        return Optional.empty();
    }

    private static Mp3Tag xing(ByteBuffer frame, int tagOffset) {
        int at = tagOffset + 4;
        if (frame.limit() < at + 8) {
            return new Mp3Tag(OptionalInt.empty(), false, 0, 0);
        }
        int flags = frame.getInt(at);
        at += 4;
        OptionalInt frames = (flags & HAS_FRAMES) == 0 ? OptionalInt.empty() : count(frame.getInt(at));
        at += (flags & HAS_FRAMES) == 0 ? 0 : 4;
        at += (flags & HAS_BYTES) == 0 ? 0 : 4;
        at += (flags & HAS_SEEK_TABLE) == 0 ? 0 : SEEK_TABLE_BYTES;
        at += (flags & HAS_QUALITY) == 0 ? 0 : 4;
        boolean isGapless = frame.limit() >= at + DELAY_OFFSET + 3 && GAPLESS_ENCODERS.contains(word(frame, at));
        if (!isGapless) {
            return new Mp3Tag(frames, false, 0, 0);
        }
        int both = frame.getInt(at + DELAY_OFFSET - 1) & 0xff_ffff;
        return new Mp3Tag(frames, true, both >> 12, both & 0xfff);
    }

    private static OptionalInt count(int frames) {
        return frames > 0 ? OptionalInt.of(frames) : OptionalInt.empty();
    }

    private static boolean has(ByteBuffer frame, int at, String word) {
        return frame.limit() >= at + 4 && word(frame, at).equals(word);
    }

    private static String word(ByteBuffer frame, int at) {
        byte[] four = new byte[4];
        frame.get(at, four);
        return new String(four, StandardCharsets.ISO_8859_1);
    }
}
