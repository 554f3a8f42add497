package cuelead.window.frame;

import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What is remembered from one time to the next.
 *
 * @param recents the dances that lay on the stand, the last one first
 * @param choices how it was practised
 * @param isDark  whether dark colours are worn
 * @param isStill whether nothing pulses with the beat
 * @param window  where it stood; empty = in the middle of the screen
 */
public record Session(
        List<Recent> recents, Choices choices, boolean isDark, boolean isStill, Optional<Rectangle> window) {
    /** Of a first start. */
    public static final Session FIRST = new Session(List.of(), Choices.USUAL, true, false, Optional.empty());

    private static final int MOST_RECENTS = 24;

    public Session {
        recents = List.copyOf(recents);
    }

    /** With a dance at the head of the others. */
    Session with(Recent last) {
        List<Recent> all = new ArrayList<>(List.of(last));
        recents.stream().filter(one -> !one.sheet().equals(last.sheet())).forEach(all::add);
        return new Session(all.subList(0, Math.min(MOST_RECENTS, all.size())), choices, isDark, isStill, window);
    }

    Session with(Choices others) {
        return new Session(recents, others, isDark, isStill, window);
    }

    Session withLook(boolean dark, boolean still) {
        return new Session(recents, choices, dark, still, window);
    }

    Session withWindow(Rectangle where) {
        return new Session(recents, choices, isDark, isStill, Optional.of(where));
    }
}
