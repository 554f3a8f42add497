package cuelead.document;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Locale;
import java.util.regex.Pattern;

/** What a file is, told from its content: names are often wrong. */
public enum DocumentKind {
    PLAIN_TEXT,
    PDF,
    WORD,
    /** Word 97 to 2003, or another file in the same wrapping. */
    COMPOUND,
    WEB_PAGE,
    /** A web page with its pictures in one file (RFC 2557). */
    WEB_ARCHIVE,
    PICTURE,
    RICH_TEXT,
    OPEN_DOCUMENT,
    OTHER_ARCHIVE,
    SAFARI_ARCHIVE;

    private static final int HEAD_BYTES = 2048;
    private static final int[] COMPOUND_MARK = {0xd0, 0xcf, 0x11, 0xe0};
    private static final int[][] PICTURE_MARKS = {
        {0x89, 'P', 'N', 'G'},
        {0xff, 0xd8, 0xff},
        {'G', 'I', 'F', '8'},
        {'B', 'M', -1, -1, -1, -1, 0, 0, 0, 0},
        {'I', 'I', 42, 0},
        {'M', 'M', 0, 42},
        {'R', 'I', 'F', 'F', -1, -1, -1, -1, 'W', 'E', 'B', 'P'},
        {-1, -1, -1, -1, 'f', 't', 'y', 'p', 'h', 'e', 'i'},
        {-1, -1, -1, -1, 'f', 't', 'y', 'p', 'm', 'i', 'f'},
        {-1, -1, -1, -1, 'f', 't', 'y', 'p', 'a', 'v', 'i', 'f'},
    };
    private static final Pattern PAGE = Pattern.compile(
            "^\\s*(<\\?xml[^>]*>\\s*)?(<!--.*?-->\\s*)*<(!doctype\\s+html|html|head|body|title|meta|table|div|p|h[1-6])\\b.*",
            Pattern.DOTALL);
    private static final Pattern ARCHIVED_PAGE =
            Pattern.compile(".*^content-type:\\s*multipart/related\\b.*", Pattern.DOTALL | Pattern.MULTILINE);

    static DocumentKind of(byte[] bytes) {
        String head = new String(bytes, 0, Math.min(bytes.length, HEAD_BYTES), StandardCharsets.ISO_8859_1);
        if (head.substring(0, Math.min(head.length(), 1024)).contains("%PDF-")) {
            return PDF;
        }
        if (head.startsWith("PK\3\4")) {
            return archive(bytes, head);
        }
        if (begins(bytes, COMPOUND_MARK)) {
            return COMPOUND;
        }
        for (int[] mark : PICTURE_MARKS) {
            if (begins(bytes, mark)) {
                return PICTURE;
            }
        }
        return text(bytes, head);
    }

    /** Names stand uncompressed in an archive, even in one that is cut off (APPNOTE.TXT, 4.3.7). */
    private static DocumentKind archive(byte[] bytes, String head) {
        if (head.contains("mimetypeapplication/vnd.oasis.opendocument")) {
            return OPEN_DOCUMENT;
        }
        boolean isWord = new String(bytes, StandardCharsets.ISO_8859_1).contains("word/");
        return isWord ? WORD : OTHER_ARCHIVE;
    }

    private static DocumentKind text(byte[] bytes, String head) {
        if (head.startsWith("{\\rtf")) {
            return RICH_TEXT;
        }
        if (head.startsWith("bplist00")) {
            return SAFARI_ARCHIVE;
        }
        String plain = PlainText.decode(bytes.length > HEAD_BYTES ? Arrays.copyOf(bytes, HEAD_BYTES) : bytes)
                .toLowerCase(Locale.ROOT);
        if (PAGE.matcher(plain).matches()) {
            return WEB_PAGE;
        }
        return ARCHIVED_PAGE.matcher(plain.replace("\r", "")).matches() ? WEB_ARCHIVE : PLAIN_TEXT;
    }

    private static boolean begins(byte[] bytes, int[] mark) {
        for (int i = 0; i < mark.length; i++) {
            if (i >= bytes.length || (mark[i] >= 0 && mark[i] != (bytes[i] & 0xff))) {
                return false;
            }
        }
        return true;
    }
}
