package cuelead.song;

import cuelead.time.BeatGrid;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.zip.CRC32;

/** The comment that stands over beats as they were heard. It holds a check sum of them, so that a change by hand shows. */
final class HeardMark {
    private static final String WORDS = " heard by Cuelead, check ";

    private HeardMark() {}

    static String of(BeatGrid beats) {
        CRC32 sum = new CRC32();
        sum.update(BeatFile.print(beats, List.of()).getBytes(StandardCharsets.UTF_8));
        return WORDS + String.format("%08x", sum.getValue());
    }

    /** Whether these are the beats that the mark was put over. */
    static boolean fits(BeatGrid beats, List<String> comments) {
        return comments.contains(of(beats));
    }

    static boolean isOne(String comment) {
        return comment.startsWith(WORDS);
    }
}
