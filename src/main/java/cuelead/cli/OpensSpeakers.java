package cuelead.cli;

import cuelead.report.Refused;
import cuelead.sound.Speakers;
import cuelead.time.SampleRate;

/** Opens the speakers. */
@FunctionalInterface
interface OpensSpeakers {
    /**
     * Opens them; they are silent until something is played.
     *
     * @throws Refused when there are none
     */
    Speakers at(SampleRate rate) throws Refused;
}
