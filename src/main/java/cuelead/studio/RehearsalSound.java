package cuelead.studio;

import cuelead.practice.SongMemory;
import cuelead.rehearse.PlannedCall;
import cuelead.report.Refused;
import cuelead.song.Song;
import cuelead.song.SongFile;
import cuelead.sound.Balance;
import cuelead.sound.ClickAt;
import cuelead.sound.ClickSound;
import cuelead.sound.GentleStart;
import cuelead.sound.Levels;
import cuelead.sound.Mix;
import cuelead.sound.MixPlan;
import cuelead.sound.Music;
import cuelead.sound.MusicPowers;
import cuelead.sound.PlacedClip;
import cuelead.sound.Sound;
import cuelead.time.SampleRate;
import cuelead.time.Speed;
import cuelead.time.TimeMap;
import cuelead.voice.Clip;
import cuelead.voice.Pronunciations;
import cuelead.voice.SynthVoice;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What is heard while an instructor calls: the music, or clicks where there is none, and spoken prompts for some calls. No
 * call is heard at its own time, for there she speaks herself.
 *
 * @param rate frames a second
 * @param mix  from the first frame of the song
 */
public record RehearsalSound(SampleRate rate, Sound mix) {
    private static final SampleRate RATE_WITHOUT_MUSIC = new SampleRate(44_100);
    private static final double START_SECONDS = 1.5;
    /** A prompt is over so long before its call. */
    private static final double BREATH_SECONDS = 0.35;

    /**
     * Of a dance.
     *
     * @param spoken calls that a voice reminds of
     * @param memory knows how loud the song is, or measures it
     */
    public static RehearsalSound of(ReviewedDance dance, List<PlannedCall> spoken, SongMemory memory) throws Refused {
        if (dance.music().isEmpty()) {
            List<ClickAt> clicks = dance.beats().stream()
                    .map(beat -> new ClickAt(
                            RATE_WITHOUT_MUSIC.frameAt(beat.seconds()),
                            beat.isAccented() ? ClickSound.ACCENTED : ClickSound.PLAIN))
                    .toList();
            return of(RATE_WITHOUT_MUSIC, Optional.empty(), MusicPowers.UNKNOWN, spoken, clicks);
        }
        try (Song song = SongFile.open(dance.music().get(), Optional.empty())) {
            song.awaitLoaded();
            SampleRate rate = song.pcm().rate();
            Music music = song.along(TimeMap.even(Speed.ORIGINAL));
            return of(rate, Optional.of(music), memory.powers(song), spoken, List.of());
        }
    }

    private static RehearsalSound of(
            SampleRate rate, Optional<Music> music, MusicPowers powers, List<PlannedCall> spoken, List<ClickAt> clicks)
            throws Refused {
        MixPlan plan = MixPlan.whole(rate, music, clips(spoken, rate), clicks, Levels.EVEN)
                .with(new GentleStart(rate.framesIn(START_SECONDS)));
        MixPlan fromTheBeginning = plan.withLevels(Balance.of(plan, powers)).between(0, plan.toFrame());
        return new RehearsalSound(rate, new Mix(fromTheBeginning));
    }

    /** One after the other; where there is no time for one, it is left out. */
    private static List<PlacedClip> clips(List<PlannedCall> spoken, SampleRate rate) throws Refused {
        SynthVoice voice = new SynthVoice(rate, Pronunciations.NONE);
        List<PlacedClip> clips = new ArrayList<>();
        long free = 0;
        for (PlannedCall call : spoken) {
            Optional<Clip> clip = voice.say(call.word());
            long start = clip.isPresent()
                    ? rate.frameAt(call.seconds() - BREATH_SECONDS - clip.get().endSeconds())
                    : -1;
            if (start >= free) {
                PlacedClip placed = PlacedClip.whole(start, clip.orElseThrow().samples());
                clips.add(placed);
                free = placed.endFrame();
            }
        }
        return clips;
    }
}
