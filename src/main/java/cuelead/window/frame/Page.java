package cuelead.window.frame;

import javax.swing.JComponent;

/** A page of the window. Used on the thread of events. */
public interface Page {
    /** What is shown; the same one always. */
    JComponent view();

    /** It comes to the front; what is in hand may have changed since it was there. */
    void enter();

    /** Another page comes to the front; what this one plays goes on. */
    default void leave() {}

    /** Another page begins to play or to listen: what this one plays falls silent. */
    default void fallSilent() {}

    /** The window is closed: what this one plays ends, and what is not kept yet is kept. */
    default void close() {
        fallSilent();
    }

    /** Other colours are worn from now on; those of usual controls change by themselves. */
    default void look(Palette palette) {}
}
