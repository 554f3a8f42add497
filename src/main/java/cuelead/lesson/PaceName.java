package cuelead.lesson;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;

/** The paces that have a name. */
enum PaceName {
    WALK(Pace.WALK.ofFull()),
    STEADY(Pace.STEADY.ofFull()),
    FULL(Pace.FULL.ofFull());

    private final double ofFull;

    PaceName(double ofFull) {
        this.ofFull = ofFull;
    }

    Pace pace() {
        return new Pace.Share(ofFull);
    }

    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** All words, for a pattern. */
    static String choices() {
        return Arrays.stream(values()).map(PaceName::word).collect(Collectors.joining("|"));
    }

    /** @param word one of {@link #choices}, in small or capital letters */
    static PaceName of(String word) {
        return valueOf(word.toUpperCase(Locale.ROOT));
    }
}
