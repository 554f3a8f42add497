package cuelead.cli;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the keys mean while words are recorded. */
enum RecordKeys {
    TAKE,
    ACCEPT,
    PLAY,
    EARLIER,
    LATER,
    MUCH_EARLIER,
    MUCH_LATER,
    BIT_EARLIER,
    BIT_LATER,
    BACK,
    SKIP,
    HELP,
    QUIT;

    private static final double STEP_SECONDS = 0.005;
    private static final double LARGE_SECONDS = 0.02;
    private static final double FINE_SECONDS = 0.001;

    private static final Map<String, RecordKeys> KEYS = Map.ofEntries(
            Map.entry(" ", TAKE),
            Map.entry("enter", ACCEPT),
            Map.entry("p", PLAY),
            Map.entry("left", EARLIER),
            Map.entry("right", LATER),
            Map.entry("down", MUCH_EARLIER),
            Map.entry("up", MUCH_LATER),
            Map.entry(",", BIT_EARLIER),
            Map.entry(".", BIT_LATER),
            Map.entry("b", BACK),
            Map.entry("n", SKIP),
            Map.entry("?", HELP),
            Map.entry("q", QUIT),
            Map.entry("Q", QUIT));

    /** What there is to press, for a narrow terminal. */
    static final List<String> TOLD = List.of(
            "space records (again)   Enter keeps, goes on   p plays",
            "left, right: mark 5 ms (down, up 20; comma, point 1)",
            "b back   n leaves out   ? these keys   q ends");

    static Optional<RecordKeys> of(String stroke) {
        return Optional.ofNullable(KEYS.get(stroke));
    }

    /** How much later it puts the mark; 0 for all other keys. */
    double laterSeconds() {
        return switch (this) {
            case EARLIER -> -STEP_SECONDS;
            case LATER -> STEP_SECONDS;
            case MUCH_EARLIER -> -LARGE_SECONDS;
            case MUCH_LATER -> LARGE_SECONDS;
            case BIT_EARLIER -> -FINE_SECONDS;
            case BIT_LATER -> FINE_SECONDS;
            default -> 0;
        };
    }
}
