package cuelead.cli;

import cuelead.song.Correction;
import java.util.Map;
import java.util.Optional;

/** What the keys mean while beats are tapped. */
enum TapKeys {
    TAP,
    PAUSE_OR_GO_ON,
    BACK,
    ON,
    ONE_IS_NOW,
    HALF_BEAT,
    TWICE,
    HALF,
    TWO_FOR_THREE,
    BEAT_LATER,
    BEAT_EARLIER,
    UNDO,
    CLICK,
    KEEP,
    QUIT;

    private static final Map<String, TapKeys> KEYS = Map.ofEntries(
            Map.entry(" ", TAP),
            Map.entry("p", PAUSE_OR_GO_ON),
            Map.entry("left", BACK),
            Map.entry("right", ON),
            Map.entry("1", ONE_IS_NOW),
            Map.entry("h", HALF_BEAT),
            Map.entry("+", TWICE),
            Map.entry("=", TWICE),
            Map.entry("-", HALF),
            Map.entry("3", TWO_FOR_THREE),
            Map.entry("m", BEAT_EARLIER),
            Map.entry("M", BEAT_LATER),
            Map.entry("u", UNDO),
            Map.entry("k", CLICK),
            Map.entry("enter", KEEP),
            Map.entry("q", QUIT),
            Map.entry("Q", QUIT));

    static Optional<TapKeys> of(String stroke) {
        return Optional.ofNullable(KEYS.get(stroke));
    }

    /** The change that it makes to the beats, whatever is heard. */
    Optional<Correction> correction() {
        return switch (this) {
            case HALF_BEAT -> Optional.of(Correction.HALF_BEAT);
            case TWICE -> Optional.of(Correction.TWICE);
            case HALF -> Optional.of(Correction.HALF);
            case TWO_FOR_THREE -> Optional.of(Correction.TWO_FOR_THREE);
            case BEAT_LATER -> Optional.of(Correction.COUNT_LATER);
            case BEAT_EARLIER -> Optional.of(Correction.COUNT_EARLIER);
            default -> Optional.empty();
        };
    }
}
