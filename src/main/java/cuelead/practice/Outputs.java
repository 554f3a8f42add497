package cuelead.practice;

import cuelead.sound.Change;
import cuelead.sound.HeardAt;
import cuelead.sound.LiveMix;
import cuelead.sound.MixPlan;
import cuelead.sound.Nudged;
import cuelead.sound.Route;
import cuelead.sound.Speakers;
import cuelead.sound.StemMix.Stem;
import cuelead.time.SampleRate;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/** The speakers that a practice is played on: one for all, or one for the music and one for calls and clicks. */
final class Outputs {
    private static final double NANOS_A_SECOND = 1e9;

    private final Speakers main;
    private final Optional<Speakers> calls;
    private final Delays delays;
    private LiveMix mix;
    private Optional<Companion> companion = Optional.empty();

    /** @param calls for calls and clicks; empty = they go with the music */
    Outputs(Speakers main, Optional<Speakers> calls, Delays delays) {
        this.main = main;
        this.calls = calls;
        this.delays = delays;
    }

    /** Plays from a frame of the song on, in place of all that is heard; stays paused if it is. */
    void begin(int number, MixPlan plan, long startFrame, Optional<Change.Loop> loop) {
        Set<Stem> stems = calls.isPresent() ? EnumSet.of(Stem.MUSIC) : EnumSet.allOf(Stem.class);
        mix = new LiveMix(number, plan, startFrame, loop, stems);
        companion = calls.map(speakers -> {
            LiveMix other = new LiveMix(number, plan, startFrame, loop, EnumSet.of(Stem.VOICE, Stem.CLICK));
            return new Companion(speakers, other, new Nudged(other));
        });
        companion.ifPresent(other -> other.speakers.play(other.nudged, 0));
        main.play(mix, 0);
    }

    void change(Change change) {
        companion.ifPresent(other -> other.mix.change(change));
        mix.change(change);
    }

    void pause() {
        main.pause();
        calls.ifPresent(Speakers::pause);
    }

    void resume() {
        calls.ifPresent(Speakers::resume);
        main.resume();
    }

    boolean hasEnded() {
        return main.hasEnded();
    }

    Route route() {
        return mix.route();
    }

    long nextFrame() {
        return mix.nextFrame();
    }

    /** The frame of the output that leaves this computer now. */
    long leavingFrame() {
        return main.heardFrame();
    }

    /** The frame of the output that is heard now. */
    long heardFrame(SampleRate rate) {
        return Math.max(0, main.heardFrame() - rate.frameAt(delays.musicSeconds()));
    }

    /** Keeps calls in step with music where they are on two outputs. To be called some times a second. */
    void keepTogether(SampleRate rate) {
        companion.ifPresent(other -> other.follow(main, mix, rate, delays));
    }

    /** Calls and clicks on an output of their own. */
    private static final class Companion {
        private final Speakers speakers;
        private final LiveMix mix;
        private final Nudged nudged;
        private final Distance distance = new Distance();

        Companion(Speakers speakers, LiveMix mix, Nudged nudged) {
            this.speakers = speakers;
            this.mix = mix;
            this.nudged = nudged;
        }

        void follow(Speakers main, LiveMix music, SampleRate rate, Delays delays) {
            HeardAt musicAt = main.heardAt();
            HeardAt callsAt = speakers.heardAt();
            long musicFrame = music.route().pieceAt(musicAt.frame()).songFrameAt(musicAt.frame());
            long given = callsAt.frame() - nudged.movedFrames();
            long callsFrame = mix.route().pieceAt(given).songFrameAt(given);
            double apartSeconds = rate.secondsAt(callsFrame - musicFrame)
                    - (callsAt.nanos() - musicAt.nanos()) / NANOS_A_SECOND
                    - (delays.callsSeconds() - delays.musicSeconds());
            distance.after(apartSeconds)
                    .ifPresent(seconds -> nudged.moveTo(nudged.movedFrames() + rate.frameAt(seconds)));
        }
    }
}
