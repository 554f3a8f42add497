package cuelead.window.song;

import cuelead.practice.Delays;
import cuelead.practice.LivePractice;
import cuelead.practice.Places;
import cuelead.practice.Practice;
import cuelead.practice.Progress;
import cuelead.practice.Wish;
import cuelead.report.Refused;
import cuelead.steer.SpeakerPair;
import cuelead.time.BeatGrid;
import java.util.Optional;

/** A song with the calls of its dance, and with clicks or without. */
final class CalledSounding implements Sounding {
    private final Practice practice;
    private final SpeakerPair speakers;
    private final LivePractice live;

    private CalledSounding(Practice practice, SpeakerPair speakers, LivePractice live) {
        this.practice = practice;
        this.speakers = speakers;
        this.live = live;
    }

    /** Begins to sound where the wish says. */
    static CalledSounding begin(Wish wish, Places places, OpensSpeakers opening, Progress progress)
            throws Refused, InterruptedException {
        Practice practice = Practice.prepareToPlay(wish, places, progress);
        try {
            long loaded = practice.fromFrame() + practice.rate().frameAt(ClickedSounding.LOADED_FIRST_SECONDS);
            practice.awaitPlayable(Math.min(practice.toFrame(), loaded));
            SpeakerPair speakers = opening.open(practice.rate());
            return new CalledSounding(practice, speakers, practice.live(speakers.main(), speakers.ear(), Delays.NONE));
        } catch (Refused | InterruptedException | RuntimeException | Error e) {
            practice.close();
            throw e;
        }
    }

    @Override
    public double heardSeconds() {
        return live.heard().clock().seconds();
    }

    @Override
    public void tick() throws Refused {
        live.tick();
        live.check();
        practice.isSongLoaded(); // asks for the rest
    }

    @Override
    public void pause() {
        live.pause();
    }

    @Override
    public void resume() {
        live.resume();
    }

    @Override
    public boolean isPaused() {
        return live.isPaused();
    }

    @Override
    public boolean hasEnded() {
        return live.hasEnded();
    }

    /** The beats are those that it was made ready with. */
    @Override
    public void click(Optional<BeatGrid> beats) {
        live.click(beats.isPresent() ? Wish.Click.EVERY_BEAT : Wish.Click.SILENT);
    }

    @Override
    public void close() {
        speakers.stop();
        speakers.close();
        practice.close();
    }
}
