package cuelead.song;

import cuelead.time.BeatGrid;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.zip.CRC32;

/** The comment that stands over beats that Cuelead wrote. It holds a check sum of them, so that a change by hand shows. */
enum BeatMark {
    /** As they were heard. */
    HEARD(" heard by Cuelead, check "),
    /** Another song's beats, which a user had written or put right, at the times of a slower or faster copy. */
    MOVED(" moved by Cuelead, check ");

    private final String words;

    BeatMark(String words) {
        this.words = words;
    }

    String of(BeatGrid beats) {
        CRC32 sum = new CRC32();
        sum.update(BeatFile.print(beats, List.of()).getBytes(StandardCharsets.UTF_8));
        return words + String.format("%08x", sum.getValue());
    }

    /** Whether these are the beats that the mark was put over. */
    boolean fits(BeatGrid beats, List<String> comments) {
        return comments.contains(of(beats));
    }

    static boolean isOne(String comment) {
        return Arrays.stream(values()).anyMatch(mark -> comment.startsWith(mark.words));
    }
}
