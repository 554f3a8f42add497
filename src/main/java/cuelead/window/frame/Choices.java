package cuelead.window.frame;

import cuelead.plan.CallLevel;
import cuelead.plan.CallSettings;
import cuelead.practice.CallsGo;
import cuelead.practice.VoiceWish;
import cuelead.practice.Wish;
import cuelead.report.Refused;
import cuelead.steer.DeviceChoice;
import cuelead.steer.SoundDevices;
import cuelead.time.Speed;
import cuelead.time.Tempo;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How it is practised.
 *
 * @param leadBeats  how early calls come; empty = as the sheet says, else 2
 * @param level      how much is called
 * @param fading     whether calls grow fewer from wall to wall
 * @param click      whether a click is heard
 * @param callsGo    where calls are heard
 * @param speed      how fast the song is played
 * @param way        whether easier steps are danced
 * @param ownWords   a folder of recorded words
 * @param device     a part of the name of the loudspeakers; empty = the usual ones
 * @param ear        the same for calls that go apart
 * @param microphone the same for a microphone
 */
public record Choices(
        OptionalDouble leadBeats,
        CallLevel level,
        CallSettings.Fading fading,
        Wish.Click click,
        CallsGo callsGo,
        Speed speed,
        Wish.Way way,
        Optional<Path> ownWords,
        Optional<String> device,
        Optional<String> ear,
        Optional<String> microphone) {
    public static final Choices USUAL = new Choices(
            OptionalDouble.empty(),
            CallLevel.WORDS,
            CallSettings.Fading.STEADY,
            Wish.Click.SILENT,
            CallsGo.WITH_THE_MUSIC,
            Speed.ORIGINAL,
            Wish.Way.AS_WRITTEN,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());

    /**
     * A wish for a dance.
     *
     * @param song   empty = the one that the sheet names
     * @param clicks the tempo of clicks in the place of a song
     */
    public Wish wish(Path sheet, Optional<Path> song, Optional<Tempo> clicks) {
        return Wish.of(sheet)
                .song(clicks.isPresent() ? Optional.empty() : song)
                .tempo(clicks)
                .speed(clicks.isPresent() ? Speed.ORIGINAL : speed)
                .leadBeats(leadBeats)
                .calls(level, fading)
                .click(click)
                .callsGo(callsGo)
                .way(way)
                .voice(VoiceWish.USUAL.withOwnWords(ownWords))
                .wish();
    }

    /**
     * The devices to play on.
     *
     * @throws Refused when one that is chosen is not there
     */
    public DeviceChoice devices(SoundDevices all) throws Refused {
        return DeviceChoice.of(device, callsGo == CallsGo.APART ? ear : Optional.empty(), all);
    }
}
