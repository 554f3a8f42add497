package cuelead.song;

/**
 * Where the MPEG frames of an MP3 file can begin and must end: between the tags that players write in front
 * (ID3v2) and behind (ID3v1, APEv2, Lyrics3), which are no sound.
 */
final class Mp3Edges {
    private static final int ID3V2_HEADER = 10;
    private static final int ID3V1_BYTES = 128;
    private static final int APE_FOOTER = 32;
    private static final int LYRICS_FOOTER = 15;

    private Mp3Edges() {}

    /** The first byte after all ID3v2 tags. */
    static int start(byte[] bytes, int end) {
        int at = 0;
        while (at + ID3V2_HEADER <= end && is(bytes, at, "ID3") && (bytes[at + 6] & 0x80) == 0) {
            long size = (bytes[at + 6] & 0x7fL) << 21
                    | (bytes[at + 7] & 0x7fL) << 14
                    | (bytes[at + 8] & 0x7fL) << 7
                    | (bytes[at + 9] & 0x7fL);
            boolean hasFooter = (bytes[at + 5] & 0x10) != 0;
            at = (int) Math.min(end, at + size + ID3V2_HEADER + (hasFooter ? ID3V2_HEADER : 0));
        }
        return at;
    }

    /** The first byte of the tags at the end. */
    static int end(byte[] bytes) {
        int end = bytes.length;
        int before = end + 1;
        while (end < before) {
            before = end;
            if (end >= ID3V1_BYTES && is(bytes, end - ID3V1_BYTES, "TAG")) {
                end -= ID3V1_BYTES;
            }
            end -= apeBytes(bytes, end);
            end -= lyricsBytes(bytes, end);
        }
        return end;
    }

    private static int apeBytes(byte[] bytes, int end) {
        int footer = end - APE_FOOTER;
        if (footer < 0 || !is(bytes, footer, "APETAGEX")) {
            return 0;
        }
        long size = 0;
        for (int i = 3; i >= 0; i--) {
            size = size << 8 | (bytes[footer + 12 + i] & 0xff);
        }
        boolean hasHeader = (bytes[footer + 23] & 0x80) != 0;
        long all = size + (hasHeader ? APE_FOOTER : 0);
        return all <= end ? (int) all : APE_FOOTER;
    }

    private static int lyricsBytes(byte[] bytes, int end) {
        int footer = end - LYRICS_FOOTER;
        if (footer < 0 || !is(bytes, end - 9, "LYRICS200")) {
            return 0;
        }
        int size = 0;
        for (int i = footer; i < footer + 6; i++) {
            if (bytes[i] < '0' || bytes[i] > '9') {
                return 0;
            }
            size = size * 10 + bytes[i] - '0';
        }
        return size + LYRICS_FOOTER <= end ? size + LYRICS_FOOTER : 0;
    }

    private static boolean is(byte[] bytes, int at, String word) {
        for (int i = 0; i < word.length(); i++) {
            if (at + i >= bytes.length || bytes[at + i] != word.charAt(i)) {
                return false;
            }
        }
        return true;
    }
}
