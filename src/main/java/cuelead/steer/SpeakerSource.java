package cuelead.steer;

import cuelead.output.DeviceName;
import cuelead.report.Refused;
import cuelead.sound.Speakers;
import cuelead.time.SampleRate;
import java.util.Optional;

/** Where speakers come from. */
@FunctionalInterface
public interface SpeakerSource {
    /**
     * Opens some; they are silent until something is played.
     *
     * @param name of their device; empty = the usual one
     * @throws Refused when it is not there
     */
    Speakers open(Optional<DeviceName> name, SampleRate rate) throws Refused;
}
