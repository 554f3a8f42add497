package cuelead.steer;

import cuelead.practice.Delays;
import cuelead.practice.Heard;
import cuelead.report.Refused;
import java.util.Optional;

/** What plays and obeys a user's orders. Used on one thread. */
public interface Steered {
    /** What leaves the speakers now. */
    Heard heard();

    /** To be called some times a second. */
    void tick() throws Refused;

    /** Does a piece of what makes it obey the first order as soon as later ones; to be called while it plays. */
    void getReady();

    boolean hasEnded();

    /** Obeys; gives what was done in a few words, empty where it shows by itself. */
    String obey(Ask ask) throws Refused;

    /** What was done of an order that had to wait for the one before it. */
    Optional<String> news();

    /** How it plays, as it was ordered. */
    PlayState state();

    /** Where a lesson is. */
    PassLines pass() throws Refused;

    /** The keys that it obeys. */
    KeyHelp keys();

    Delays delays();
}
