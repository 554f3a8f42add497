package cuelead.voice;

import cuelead.sound.ClickAt;
import cuelead.sound.ClickSound;
import cuelead.sound.Levels;
import cuelead.sound.Mix;
import cuelead.sound.MixPlan;
import cuelead.sound.PlacedClip;
import cuelead.sound.Sound;
import cuelead.time.SampleRate;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** What is heard while words are recorded: a count-in, and a take against a click. */
public final class TakeClicks {
    /** As fast as a brisk dance. */
    static final double BEAT_SECONDS = 0.5;

    private static final int COUNT_IN = 4;
    private static final double BEFORE_SECONDS = 0.3;
    /** The last click dies away before the microphone is listened to. */
    private static final double AFTER_SECONDS = 0.15;

    private static final int BEATS_AGAINST = 4;
    /** The word comes on the third click. */
    private static final int WORD_BEAT = 2;
    /** In an earphone a click is loud. */
    private static final Levels LEVELS = new Levels(0, 0, -10, 0);

    private TakeClicks() {}

    /** Four clicks and a moment of silence. */
    public static Sound countIn(SampleRate rate) {
        double end = BEFORE_SECONDS + (COUNT_IN - 1) * BEAT_SECONDS + AFTER_SECONDS;
        return new Mix(
                new MixPlan(rate, Optional.empty(), List.of(), clicks(COUNT_IN, rate), LEVELS, 0, rate.frameAt(end)));
    }

    /** Four clicks, with the word's centre on the third. */
    public static Sound against(Clip clip) {
        SampleRate rate = clip.rate();
        double word = BEFORE_SECONDS + WORD_BEAT * BEAT_SECONDS - clip.centreSeconds();
        List<PlacedClip> clips = List.of(PlacedClip.whole(rate.frameAt(word), clip.samples()));
        return new Mix(MixPlan.whole(rate, Optional.empty(), clips, clicks(BEATS_AGAINST, rate), LEVELS));
    }

    private static List<ClickAt> clicks(int count, SampleRate rate) {
        return IntStream.range(0, count)
                .mapToObj(beat -> new ClickAt(
                        rate.frameAt(BEFORE_SECONDS + beat * BEAT_SECONDS),
                        beat == 0 ? ClickSound.ACCENTED : ClickSound.PLAIN))
                .toList();
    }
}
