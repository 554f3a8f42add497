package cuelead.cli;

import cuelead.practice.CallsGo;
import cuelead.practice.Wish;

/**
 * How a practice plays, beside what {@code Heard} says.
 *
 * @param motion  whether it goes on
 * @param dipDb   how far the music goes down under the calls
 * @param voiceDb how much louder the calls are than balanced
 * @param click   whether a click is heard over music
 * @param callsGo where calls and clicks are heard
 */
record PlayState(Motion motion, double dipDb, double voiceDb, Wish.Click click, CallsGo callsGo) {
    /** Whether it goes on. */
    enum Motion {
        PLAYING,
        PAUSED,
        /** Until a device is there again. */
        NO_DEVICE
    }

    /** The same while there is no sound device. */
    PlayState withoutDevice() {
        return new PlayState(Motion.NO_DEVICE, dipDb, voiceDb, click, callsGo);
    }
}
