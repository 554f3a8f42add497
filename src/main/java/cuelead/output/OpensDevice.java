package cuelead.output;

import cuelead.report.Refused;
import cuelead.time.SampleRate;

/** How a device is opened. */
@FunctionalInterface
interface OpensDevice {
    /**
     * Opens it.
     *
     * @throws Refused when there is none
     */
    AlDevice at(SampleRate rate) throws Refused;
}
