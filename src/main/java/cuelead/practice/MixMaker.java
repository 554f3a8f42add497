package cuelead.practice;

import cuelead.song.Song;
import cuelead.sound.ClickAt;
import cuelead.sound.ClickSound;
import cuelead.sound.GentleStart;
import cuelead.sound.MixPlan;
import cuelead.sound.Music;
import cuelead.sound.PlacedClip;
import cuelead.time.BeatGrid;
import cuelead.time.SampleRate;
import cuelead.voice.Clip;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Turns spoken calls, a song and its beats into the plan of a mix. */
final class MixMaker {
    /** So long music rises where playing begins. */
    private static final double START_SECONDS = 1.5;

    private final SampleRate rate;
    private final Optional<Song> song;

    MixMaker(SampleRate rate, Optional<Song> song) {
        this.rate = rate;
        this.song = song;
    }

    SampleRate rate() {
        return rate;
    }

    boolean hasMusic() {
        return song.isPresent();
    }

    /** Waits until all that is struck in the music is found, which a mix at another speed needs. */
    void awaitStrokes() {
        song.ifPresent(open -> open.onsets().all());
    }

    /** The same where nothing but clicks is danced to. */
    MixMaker withoutMusic() {
        return new MixMaker(rate, Optional.empty());
    }

    MixPlan make(List<SpokenCall> calls, BeatGrid grid, Manner manner) {
        List<PlacedClip> clips = calls.stream().map(this::placed).toList();
        Optional<Music> music = song.map(open -> open.along(manner.ground().map()));
        return MixPlan.whole(rate, music, clips, clicks(grid, manner.click()), manner.levels())
                .with(new GentleStart(rate.framesIn(START_SECONDS)));
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
    private List<ClickAt> clicks(BeatGrid grid, Wish.Click click) {
        List<ClickAt> clicks = new ArrayList<>();
        if (song.isPresent() && click == Wish.Click.SILENT) {
            return clicks;
        }
        for (int beat = 0; beat < grid.size(); beat++) {
            ClickSound sound = grid.beatInBar(beat) == 1 ? ClickSound.ACCENTED : ClickSound.PLAIN;
            clicks.add(new ClickAt(rate.frameAt(grid.beatSeconds(beat)), sound));
        }
        return clicks;
    }
}
