package cuelead.studio;

import cuelead.rehearse.PlannedCall;
import java.util.Optional;

/**
 * What is to be read at a moment of a rehearsal.
 *
 * @param songSeconds the place in the song
 * @param place       the next call, or the last one when all are over: where in the dance the song is
 * @param prompted    the call to breathe for; empty while there is none
 * @param then        the call right after it, where it is prompted too
 */
public record RehearsalScene(
        double songSeconds, PlannedCall place, Optional<PlannedCall> prompted, Optional<PlannedCall> then) {}
