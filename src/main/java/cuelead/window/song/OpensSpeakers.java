package cuelead.window.song;

import cuelead.report.Refused;
import cuelead.steer.SpeakerPair;
import cuelead.time.SampleRate;

/** Opens the speakers that the user has chosen. */
@FunctionalInterface
interface OpensSpeakers {
    /**
     * Those for sound of that rate.
     *
     * @throws Refused when one is not there
     */
    SpeakerPair open(SampleRate rate) throws Refused;
}
