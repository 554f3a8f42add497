package cuelead.window.frame;

import cuelead.practice.Progress;
import cuelead.report.Refused;

/**
 * Longer work.
 *
 * @param <T> what comes of it
 */
@FunctionalInterface
public interface Job<T> {
    /**
     * Does it; on a thread of its own, which is interrupted when it is broken off.
     *
     * @param progress to be told how far it is; throws {@link java.util.concurrent.CancellationException} once the work is
     *                 broken off
     * @throws Refused              when it cannot be done; the sentence is shown to the user
     * @throws InterruptedException when it was broken off
     */
    T run(Progress progress) throws Refused, InterruptedException;
}
