package cuelead.practice;

import cuelead.plan.Timeline;
import cuelead.song.Song;
import cuelead.sound.Balance;
import cuelead.sound.ClickAt;
import cuelead.sound.ClickSound;
import cuelead.sound.Levels;
import cuelead.sound.MixPlan;
import cuelead.sound.PlacedClip;
import cuelead.time.BeatGrid;
import cuelead.time.SampleRate;
import cuelead.voice.Clip;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Turns spoken calls, a song and the beats into a balanced mix. */
final class MixMaker {
    private final Timeline timeline;
    private final SampleRate rate;
    private final Wish wish;

    MixMaker(Timeline timeline, SampleRate rate, Wish wish) {
        this.timeline = timeline;
        this.rate = rate;
        this.wish = wish;
    }

    /** @param musicPowers K-weighted powers of the song's 100 ms blocks; empty without a song */
    MixPlan make(List<SpokenCall> calls, Optional<Song> song, float[] musicPowers) {
        List<PlacedClip> clips = calls.stream().map(this::placed).toList();
        MixPlan even = MixPlan.whole(rate, song.map(Song::pcm), clips, clicks(song.isPresent()), Levels.EVEN);
        MixPlan balanced = even.withLevels(Balance.of(even, musicPowers));
        long from = rate.frameAt(wish.fromSeconds());
        long to = wish.toSeconds().isPresent() ? rate.frameAt(wish.toSeconds().getAsDouble()) : balanced.toFrame();
        return balanced.between(from, to).withoutClipsBefore(from);
    }

    private PlacedClip placed(SpokenCall call) {
        Clip clip = call.clip();
        return new PlacedClip(
                call.startFrame(),
                clip.samples(),
                rate.framesIn(clip.onsetSeconds()),
                Math.min(clip.samples().length, rate.framesIn(clip.endSeconds())),
                0);
    }

    /** A click a beat, accented on the first of the bar; always where there is no music. */
    private List<ClickAt> clicks(boolean overSong) {
        List<ClickAt> clicks = new ArrayList<>();
        if (overSong && wish.click() == Wish.Click.SILENT) {
            return clicks;
        }
        BeatGrid grid = timeline.grid();
        for (int beat = 0; beat < grid.size(); beat++) {
            ClickSound sound = grid.beatInBar(beat) == 1 ? ClickSound.ACCENTED : ClickSound.PLAIN;
            clicks.add(new ClickAt(rate.frameAt(grid.beatSeconds(beat)), sound));
        }
        return clicks;
    }
}
