package cuelead.lesson;

import java.util.Locale;
import java.util.Optional;

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

    static Optional<PaceName> of(String word) {
        for (PaceName name : values()) {
            if (name.word().equals(word)) {
                return Optional.of(name);
            }
        }
        return Optional.empty();
    }
}
