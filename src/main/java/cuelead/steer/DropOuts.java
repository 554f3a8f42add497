package cuelead.steer;

import java.util.Optional;

/** What is told when the sound broke off because it was not fed in time. */
public final class DropOuts {
    private DropOuts() {}

    /** A sentence; empty where it never did. */
    public static Optional<String> told(int times) {
        return times > 0
                ? Optional.of("The sound broke off " + Told.number(times, "time")
                        + ": this computer is too busy. Close other programs.")
                : Optional.empty();
    }
}
