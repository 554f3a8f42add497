package cuelead.cli;

import cuelead.window.Stand;
import cuelead.window.frame.Means;

/** Opens the window with what this process has. Apart from all else, for no command loads what the window needs. */
final class WindowStart {
    private WindowStart() {}

    /** Waits until it is closed. */
    static int open(Surroundings surroundings) throws InterruptedException {
        Stand.open(new Means(
                surroundings.places(), surroundings.kept(), surroundings.devices(), DemoFiles.sheet(surroundings)));
        return Failures.DONE;
    }
}
