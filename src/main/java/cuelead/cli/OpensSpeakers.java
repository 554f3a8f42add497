package cuelead.cli;

import cuelead.output.Speakers;
import cuelead.report.Refused;
import cuelead.time.SampleRate;

/** Opens the speakers. */
@FunctionalInterface
interface OpensSpeakers {
    /** @throws Refused when there are none */
    Speakers at(SampleRate rate) throws Refused;
}
