package cuelead.steer;

import cuelead.plan.CallSettings;
import cuelead.practice.CallsGo;
import cuelead.practice.Heard;
import cuelead.practice.Wish;
import cuelead.sound.Dipping;
import java.util.Optional;

/**
 * How a practice plays, as it was ordered: what is heard follows within a beat or so.
 *
 * @param motion  whether it goes on
 * @param calls     how calls are chosen
 * @param repeating whether a section is repeated
 * @param dip     how the music goes down under the calls
 * @param voiceDb how much louder the calls are than balanced
 * @param click   whether a click is heard over music
 * @param callsGo where calls and clicks are heard
 * @param pace    how fast the song is played; empty where a pass tells it
 */
public record PlayState(
        Motion motion,
        CallSettings calls,
        Heard.Repeating repeating,
        Dipping dip,
        double voiceDb,
        Wish.Click click,
        CallsGo callsGo,
        Optional<SongPace> pace) {
    /** Whether it goes on. */
    public enum Motion {
        PLAYING,
        PAUSED,
        /** The calls alone go on, until the music's device is there again. */
        NO_MUSIC,
        /** The music alone goes on, until the calls' device is there again. */
        NO_CALLS,
        /** Nothing goes on until a device is there again. */
        NO_DEVICE
    }

    /** The same where it goes on otherwise. */
    PlayState with(Motion other) {
        return new PlayState(other, calls, repeating, dip, voiceDb, click, callsGo, pace);
    }
}
