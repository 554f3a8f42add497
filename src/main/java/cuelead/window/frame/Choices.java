package cuelead.window.frame;

import cuelead.plan.CallLevel;
import cuelead.plan.CallSettings;
import cuelead.practice.CallsGo;
import cuelead.practice.VoiceWish;
import cuelead.practice.Wish;
import cuelead.report.Refused;
import cuelead.steer.DeviceChoice;
import cuelead.steer.PlayState;
import cuelead.steer.SongPace;
import cuelead.steer.SoundDevices;
import cuelead.time.Speed;
import cuelead.time.Tempo;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How it is practised.
 *
 * @param clicks     the tempo of clicks, where they stand for a song
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
        Tempo clicks,
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
            new Tempo(104),
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
     * @param song empty = the one that the sheet names
     */
    public Wish wish(Path sheet, Optional<Path> song, Course course) {
        boolean isClicked = course == Course.TO_CLICKS;
        return Wish.of(sheet)
                .song(isClicked ? Optional.empty() : song)
                .tempo(isClicked ? Optional.of(clicks) : Optional.empty())
                .speed(course == Course.TO_THE_SONG ? speed : Speed.ORIGINAL)
                .leadBeats(leadBeats)
                .calls(level, fading)
                .click(click)
                .callsGo(callsGo)
                .way(way)
                .voice(VoiceWish.USUAL.withOwnWords(ownWords))
                .wish();
    }

    /**
     * As it was chosen while something played.
     *
     * @param first how it began
     * @param state how it played last
     */
    public Choices after(PlayState first, PlayState state) {
        boolean isLeadChosen = state.pace().equals(first.pace())
                && !state.calls().lead().equals(first.calls().lead());
        return new Choices(
                clicks,
                isLeadChosen ? OptionalDouble.of(state.calls().lead().toDecimal()) : leadBeats,
                state.calls().level(),
                state.calls().fading(),
                state.click(),
                state.callsGo(),
                state.pace().map(SongPace::speed).orElse(speed),
                way,
                ownWords,
                device,
                ear,
                microphone);
    }

    /** With the song as fast as it is. */
    public Choices atOwnSpeed() {
        return new Choices(
                clicks,
                leadBeats,
                level,
                fading,
                click,
                callsGo,
                Speed.ORIGINAL,
                way,
                ownWords,
                device,
                ear,
                microphone);
    }

    /** With other clicks. */
    public Choices withClicks(Tempo other) {
        return new Choices(
                other, leadBeats, level, fading, click, callsGo, speed, way, ownWords, device, ear, microphone);
    }

    /** With or without easier steps. */
    public Choices withWay(Wish.Way other) {
        return new Choices(
                clicks, leadBeats, level, fading, click, callsGo, speed, other, ownWords, device, ear, microphone);
    }

    /** With a folder of recorded words, or without. */
    public Choices withOwnWords(Optional<Path> folder) {
        return new Choices(
                clicks, leadBeats, level, fading, click, callsGo, speed, way, folder, device, ear, microphone);
    }

    /** With calls that go elsewhere. */
    public Choices withCallsGo(CallsGo other) {
        return new Choices(
                clicks, leadBeats, level, fading, click, other, speed, way, ownWords, device, ear, microphone);
    }

    /** On other loudspeakers. */
    public Choices withDevice(Optional<String> other) {
        return new Choices(
                clicks, leadBeats, level, fading, click, callsGo, speed, way, ownWords, other, ear, microphone);
    }

    /** With another device for calls that go apart. */
    public Choices withEar(Optional<String> other) {
        return new Choices(
                clicks, leadBeats, level, fading, click, callsGo, speed, way, ownWords, device, other, microphone);
    }

    /** With another microphone. */
    public Choices withMicrophone(Optional<String> other) {
        return new Choices(clicks, leadBeats, level, fading, click, callsGo, speed, way, ownWords, device, ear, other);
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
