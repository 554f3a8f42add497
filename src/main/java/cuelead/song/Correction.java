package cuelead.song;

import cuelead.report.Refused;
import cuelead.time.BeatGrid;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** One way in which a user puts beats right: all of them, or those of a stretch. */
public enum Correction {
    COUNT_LATER("the count a beat later"),
    COUNT_EARLIER("the count a beat earlier"),
    HALF_BEAT("half a beat later"),
    TWICE("twice as many beats"),
    HALF("half as many beats"),
    TWO_FOR_THREE("two beats for three"),
    THREE_FOR_TWO("three beats for two");

    private final String words;

    Correction(String words) {
        this.words = words;
    }

    private List<GridBeat> of(List<GridBeat> beats) {
        return switch (this) {
            case COUNT_LATER -> CountShift.by(1, beats);
            case COUNT_EARLIER -> CountShift.by(-1, beats);
            case HALF_BEAT -> PulseChange.halfABeatLater(beats);
            case TWICE -> PulseChange.twice(beats);
            case HALF -> PulseChange.half(beats);
            case TWO_FOR_THREE -> PulseChange.twoForThree(beats);
            case THREE_FOR_TWO -> PulseChange.threeForTwo(beats);
        };
    }

    /**
     * The beats put right.
     *
     * @param within only those of this stretch; empty for all
     * @throws Refused when the stretch has too few beats
     */
    public BeatGrid apply(BeatGrid beats, Optional<Hearing.Stretch> within) throws Refused {
        return GridBeat.changed(beats, within, this::of);
    }

    /**
     * The comment by which a beat file remembers it.
     *
     * @param within as in {@link #apply}
     */
    public String comment(Optional<Hearing.Stretch> within) {
        return GridBeat.comment(words, within);
    }

    /** The beat next to a time becomes 1, and all others with it. */
    public static BeatGrid oneAt(double seconds, BeatGrid beats, Optional<Hearing.Stretch> within) throws Refused {
        return GridBeat.changed(beats, within, all -> CountShift.oneAt(seconds, all));
    }

    /** The comment for {@link #oneAt}. */
    public static String oneAtComment(double seconds, Optional<Hearing.Stretch> within) {
        return GridBeat.comment(String.format(Locale.ROOT, "count 1 at %.2f", seconds), within);
    }

    /** Of a file's comments those that stay when its beats are put right: all but those that hold for
     * unchanged beats only. */
    public static List<String> kept(List<String> comments) {
        return unmarked(comments).stream()
                .filter(comment -> !comment.startsWith(BeatFile.ENTRY_COMMENT))
                .toList();
    }

    /** All but those that say that no user has changed it. */
    static List<String> unmarked(List<String> comments) {
        return comments.stream().filter(comment -> !BeatMark.isOne(comment)).toList();
    }
}
