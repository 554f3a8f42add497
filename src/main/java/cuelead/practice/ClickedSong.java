package cuelead.practice;

import cuelead.song.Song;
import cuelead.sound.ClickAt;
import cuelead.sound.ClickSound;
import cuelead.sound.Levels;
import cuelead.sound.MixPlan;
import cuelead.time.BeatGrid;
import cuelead.time.SampleRate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A song with a click on each of its beats, to hear whether they are right. */
public final class ClickedSong {
    /** The song steps back, so that clicks are heard through loud music. */
    private static final Levels LEVELS = new Levels(-8, 0, 0, 0);

    private ClickedSong() {}

    /** A high click on the first of each phrase, or of each bar where there are no phrases. */
    public static MixPlan plan(Song song, BeatGrid beats) {
        SampleRate rate = song.pcm().rate();
        List<ClickAt> clicks = new ArrayList<>();
        for (int i = 0; i < beats.size(); i++) {
            int number = beats.countInPhrase(i) > 0 ? beats.countInPhrase(i) : beats.beatInBar(i);
            clicks.add(new ClickAt(
                    rate.frameAt(beats.beatSeconds(i)), number == 1 ? ClickSound.ACCENTED : ClickSound.PLAIN));
        }
        return withClicks(song, clicks);
    }

    /** The song alone, as loud as with its clicks. */
    static MixPlan planWithoutClicks(Song song) {
        return withClicks(song, List.of());
    }

    private static MixPlan withClicks(Song song, List<ClickAt> clicks) {
        return MixPlan.whole(song.pcm().rate(), Optional.of(song.pcm()), List.of(), clicks, LEVELS);
    }
}
