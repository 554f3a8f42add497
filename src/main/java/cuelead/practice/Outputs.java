package cuelead.practice;

import cuelead.practice.Companion.Leg;
import cuelead.sound.Change;
import cuelead.sound.LiveMix;
import cuelead.sound.MixPlan;
import cuelead.sound.Route;
import cuelead.sound.Speakers;
import cuelead.sound.StemMix.Stem;
import cuelead.time.SampleRate;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/** The speakers that a practice is played on: one for all, or one for the music and one for calls and clicks. */
final class Outputs {
    private final Speakers main;
    private final Set<Stem> mainStems;
    private final Optional<Companion> companion;
    private final SampleRate rate;
    private Delays delays;
    private LiveMix mix;
    private Leg newest;
    /** The companion that is heard alone while the main device is lost; it says what is heard. */
    private Optional<Companion> soloist = Optional.empty();

    private Outputs(Speakers main, Set<Stem> mainStems, Optional<Companion> companion, Delays delays, SampleRate rate) {
        this.main = main;
        this.mainStems = mainStems;
        this.companion = companion;
        this.delays = delays;
        this.rate = rate;
    }

    /** @param calls for calls and clicks; empty = they go with the music */
    static Outputs ofPractice(Speakers main, Optional<Speakers> calls, Delays delays, SampleRate rate) {
        Optional<Companion> companion =
                calls.map(speakers -> new Companion(speakers, EnumSet.of(Stem.VOICE, Stem.CLICK), rate));
        Set<Stem> stems = calls.isPresent() ? EnumSet.of(Stem.MUSIC) : EnumSet.allOf(Stem.class);
        return new Outputs(main, stems, companion, delays, rate);
    }

    /** Clicks on both. */
    static Outputs ofClicks(Speakers main, Speakers calls, Delays delays, SampleRate rate) {
        Set<Stem> clicks = EnumSet.of(Stem.CLICK);
        return new Outputs(main, clicks, Optional.of(new Companion(calls, clicks, rate)), delays, rate);
    }

    /** Plays from a frame of the song on, in place of all that is heard; stays paused if it is. */
    void begin(int number, MixPlan plan, long startFrame, Optional<Change.Loop> loop) {
        newest = new Leg(number, plan, loop);
        mix = new LiveMix(number, plan, startFrame, loop, mainStems);
        companion.ifPresent(other -> other.begin(newest, startFrame, delays));
        main.play(mix, 0);
        soloist = soloist.filter(alone -> main.isDeviceLost());
    }

    void change(Change change) {
        newest = new Leg(change.number(), change.plan(), change.loop());
        companion.ifPresent(other -> other.change(change));
        mix.change(change);
    }

    void pause() {
        main.pause();
        companion.ifPresent(other -> other.speakers().pause());
    }

    void resume() {
        companion.ifPresent(other -> other.speakers().resume());
        if (soloist.isEmpty()) {
            main.resume();
        }
    }

    boolean hasEnded() {
        return soloist.map(Companion::speakers).orElse(main).hasEnded();
    }

    Route route() {
        return soloist.map(Companion::route).orElseGet(mix::route);
    }

    long nextFrame() {
        return soloist.map(Companion::nextFrame).orElseGet(mix::nextFrame);
    }

    /** The frame of the output that leaves this computer now. */
    long leavingFrame() {
        return soloist.map(Companion::leavingFrame).orElseGet(main::heardFrame);
    }

    /** The frame of the output that is heard now. */
    long heardFrame() {
        double laterSeconds = soloist.isPresent() ? delays.callsSeconds() : delays.musicSeconds();
        return Math.max(0, leavingFrame() - rate.frameAt(laterSeconds));
    }

    Delays delays() {
        return delays;
    }

    void delays(Delays other) {
        double laterSeconds = delays.apartSeconds() - other.apartSeconds();
        companion.ifPresent(calls -> calls.moveBy(rate.frameAt(laterSeconds)));
        delays = other;
    }

    /**
     * Lets the calls go on alone while the main device is lost. The main one is held then, so that it does not begin
     * by itself where it broke off.
     *
     * @return whether it is back, and what is heard must be begun on both
     */
    boolean goOnAlone() {
        if (soloist.isPresent()) {
            return !main.isDeviceLost();
        }
        if (main.isDeviceLost()) {
            soloist = companion.filter(other -> !other.speakers().isDeviceLost());
            soloist.ifPresent(alone -> main.pause());
        }
        return false;
    }

    /** Keeps calls in step with music where they are on two outputs. To be called some times a second. */
    void keepTogether() {
        companion.ifPresent(other -> other.follow(main, mix, newest, delays));
    }
}
