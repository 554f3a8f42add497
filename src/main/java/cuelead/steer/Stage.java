package cuelead.steer;

import cuelead.practice.CallsGo;
import cuelead.practice.Delays;

/** Where what plays is shown, and what is told of it when it is over. */
public interface Stage {
    /**
     * Opens a view.
     *
     * @param fromSeconds where in the song what plays begins
     * @param keys        those that are obeyed
     */
    View view(double fromSeconds, KeyHelp keys);

    /** Tells a sentence about what has been played. */
    void tell(String sentence);

    /** Tells delays that were found by trying, for they are worth keeping. */
    void tellDelays(CallsGo callsGo, Delays found);
}
