package cuelead.window.sheet;

import java.util.ArrayDeque;
import java.util.Deque;

/**
 * The texts that a sheet has been, to go back and forth between. What is typed without a pause is taken back at once, an
 * edit of another kind by itself.
 */
final class Versions {
    /** A sheet is some kilobytes long. */
    private static final int MOST = 500;

    private final Deque<String> before = new ArrayDeque<>();
    private final Deque<String> after = new ArrayDeque<>();
    private String now;
    private boolean isTyping;

    Versions(String first) {
        now = first;
    }

    String now() {
        return now;
    }

    /** A character more or less; goes on with those before it. */
    void typed(String text) {
        if (text.equals(now)) {
            return;
        }
        if (!isTyping) {
            keep();
        }
        now = text;
        after.clear();
        isTyping = true;
    }

    /** Nothing was typed for a while: what comes is taken back by itself. */
    void pause() {
        isTyping = false;
    }

    /** A whole edit. */
    void edited(String text) {
        pause();
        typed(text);
        pause();
    }

    private void keep() {
        before.push(now);
        if (before.size() > MOST) {
            before.removeLast();
        }
    }

    boolean canUndo() {
        return !before.isEmpty();
    }

    boolean canRedo() {
        return !after.isEmpty();
    }

    /** The text before; the same where there is none. */
    String undo() {
        pause();
        if (canUndo()) {
            after.push(now);
            now = before.pop();
        }
        return now;
    }

    /** The text that was taken back last; the same where there is none. */
    String redo() {
        pause();
        if (canRedo()) {
            before.push(now);
            now = after.pop();
        }
        return now;
    }
}
