package cuelead.sheet;

import java.util.Set;

/** Words that stand beside a number: those of counts that are danced, and those that make it a length or another thing. */
final class CountUnits {
    private static final Set<String> HEADS = Set.of("count", "counts", "ct", "cts", "beat", "beats");
    private static final Set<String> LENGTHS = Set.of(
            "count",
            "counts",
            "ct",
            "cts",
            "c",
            "beat",
            "beats",
            "wall",
            "walls",
            "w",
            "bpm",
            "mpm",
            "x",
            "times",
            "time",
            "restart",
            "restarts",
            "tag",
            "tags",
            "bridge",
            "bridges",
            "o",
            "second",
            "seconds",
            "sec",
            "secs",
            "minutes",
            "min",
            "steps",
            "more",
            "parts",
            "sections",
            "eights",
            "sixes",
            "bars");

    private CountUnits() {}

    /** "Counts 1-2:" */
    static boolean leads(String word) {
        return HEADS.contains(word);
    }

    /** "32 counts" tells a length, "104 BPM" a tempo: no counts to dance. */
    static boolean isLengthOf(String word) {
        return LENGTHS.contains(word);
    }
}
