package cuelead.song;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * What a file holds, by its first bytes; its name has no say.
 *
 * @param says for a sentence, with its article: {@code WAV sound}, {@code a PDF document}
 */
record Content(Kind kind, String says) {
    /** Who can read it. */
    enum Kind {
        MP3,
        WAV,
        AIFF,
        OGG_VORBIS,
        FLAC,
        /** Another coding in an OGG file; by the program ffmpeg only. */
        OGG_OTHER,
        /** By the program ffmpeg only. */
        FFMPEG,
        /** No sound at all. */
        OTHER,
        /** Nothing known; may still be an MP3 whose beginning is damaged. */
        UNKNOWN;

        /** Whether a file of this kind may bear a name that promises another. */
        boolean keeps(Kind promised) {
            return this == promised
                    || this == UNKNOWN
                    || promised == UNKNOWN
                    || (this == OGG_OTHER && promised == OGG_VORBIS);
        }
    }

    /** So many bytes decide. */
    static final int HEAD_BYTES = 4_096;

    /** The first packet of a Vorbis stream; version and channels follow (Vorbis I specification, section 4.2.2). */
    private static final String VORBIS = "\u0001vorbis";

    private record Mark(int at, String bytes, Kind kind, String says) {}

    private static final List<Mark> MARKS = List.of(
            new Mark(0, "fLaC", Kind.FLAC, "FLAC sound"),
            new Mark(4, "ftyp", Kind.FFMPEG, "M4A or MP4 (AAC) sound"),
            new Mark(0, "0&\u00b2u\u008ef\u00cf\u0011", Kind.FFMPEG, "WMA sound"),
            new Mark(0, "\u001aE\u00df\u00a3", Kind.FFMPEG, "Matroska or WebM sound"),
            new Mark(0, "caff", Kind.FFMPEG, "CAF sound"),
            new Mark(0, ".snd", Kind.FFMPEG, "AU sound"),
            new Mark(0, "#!AMR", Kind.FFMPEG, "AMR sound"),
            new Mark(0, "MThd", Kind.OTHER, "MIDI notes without sound"),
            new Mark(0, "%PDF", Kind.OTHER, "a PDF document"),
            new Mark(0, "\u0089PNG", Kind.OTHER, "a PNG image"),
            new Mark(0, "\u00ff\u00d8\u00ff", Kind.OTHER, "a JPEG image"),
            new Mark(0, "GIF8", Kind.OTHER, "a GIF image"),
            new Mark(0, "PK\u0003\u0004", Kind.OTHER, "a ZIP archive or an office document"),
            new Mark(0, "\u001f\u008b", Kind.OTHER, "a compressed archive"),
            new Mark(0, "{\\rtf", Kind.OTHER, "a text document"),
            new Mark(0, "\u00d0\u00cf\u0011\u00e0", Kind.OTHER, "an office document"),
            new Mark(0, "\u007fELF", Kind.OTHER, "a program"),
            new Mark(0, "MZ", Kind.OTHER, "a program"));

    private static final Map<String, Kind> ENDINGS = Map.ofEntries(
            Map.entry("mp3", Kind.MP3),
            Map.entry("wav", Kind.WAV),
            Map.entry("wave", Kind.WAV),
            Map.entry("aif", Kind.AIFF),
            Map.entry("aiff", Kind.AIFF),
            Map.entry("aifc", Kind.AIFF),
            Map.entry("ogg", Kind.OGG_VORBIS),
            Map.entry("oga", Kind.OGG_VORBIS),
            Map.entry("flac", Kind.FLAC),
            Map.entry("m4a", Kind.FFMPEG));

    /** The content of a file that begins with these bytes (after an ID3v2 tag, if it has one). */
    static Content of(byte[] head) {
        String text = new String(head, StandardCharsets.ISO_8859_1);
        for (Mark mark : MARKS) {
            if (text.startsWith(mark.bytes(), mark.at())) {
                return new Content(mark.kind(), mark.says());
            }
        }
        if (text.startsWith("RIFF") || text.startsWith("RF64")) {
            return riff(text);
        }
        if (text.startsWith("FORM") && (text.startsWith("AIFF", 8) || text.startsWith("AIFC", 8))) {
            return new Content(Kind.AIFF, "AIFF sound");
        }
        if (text.startsWith("OggS")) {
            return ogg(text);
        }
        return mpegOrText(head);
    }

    /** The kind that a file's name promises; {@code UNKNOWN} when it promises none. */
    static Kind byName(String name) {
        String ending = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
        return ENDINGS.getOrDefault(ending, Kind.UNKNOWN);
    }

    private static Content ogg(String text) {
        int vorbis = text.indexOf(VORBIS);
        int channelsAt = vorbis + VORBIS.length() + Integer.BYTES;
        if (vorbis < 0 || channelsAt >= text.length()) {
            return new Content(Kind.OGG_OTHER, text.contains("OpusHead") ? "Opus sound" : "OGG sound of another kind");
        }
        int channels = text.charAt(channelsAt);
        return channels <= 2
                ? new Content(Kind.OGG_VORBIS, "OGG Vorbis sound")
                : new Content(Kind.OGG_OTHER, "OGG Vorbis sound of " + channels + " channels");
    }

    private static Content riff(String text) {
        if (text.startsWith("WAVE", 8)) {
            return new Content(Kind.WAV, "WAV sound");
        }
        if (text.startsWith("WEBP", 8)) {
            return new Content(Kind.OTHER, "a WebP image");
        }
        return new Content(Kind.FFMPEG, "AVI or other RIFF sound");
    }

    private static Content mpegOrText(byte[] head) {
        if (head.length >= 2 && head[0] == (byte) 0xff && (head[1] & 0xf6) == 0xf0) {
            return new Content(Kind.FFMPEG, "AAC sound");
        }
        if (Mp3Header.at(head, 0, head.length).isPresent()) {
            return new Content(Kind.MP3, "MP3 sound");
        }
        return looksLikeText(head)
                ? new Content(Kind.OTHER, "text")
                : new Content(Kind.UNKNOWN, "data of no known kind");
    }

    private static boolean looksLikeText(byte[] head) {
        int odd = 0;
        for (byte b : head) {
            boolean isControl = b >= 0 && b < ' ' && b != '\n' && b != '\r' && b != '\t' && b != '\f';
            odd += isControl ? 1 : 0;
        }
        boolean isWide = head.length >= 2 && (head[0] & 0xff) + (head[1] & 0xff) == 0xff + 0xfe;
        return isWide || odd == 0;
    }
}
