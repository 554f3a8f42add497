package cuelead.practice;

import cuelead.song.Song;
import cuelead.sound.Change;
import cuelead.sound.MixPlan;
import cuelead.sound.Speakers;
import cuelead.time.BeatGrid;
import cuelead.time.SampleRate;
import java.util.Optional;

/**
 * A song that plays while its beats are put right, with a click on each of them or with none. Used on one thread; the
 * audio thread never waits for it.
 */
public final class LiveBeats {
    /** From an order to the first frame that it changes, so that it is planned before that frame is read. */
    private static final double PLANNING_SECONDS = 0.04;

    private final Song song;
    private final SampleRate rate;
    private final Outputs outputs;
    private int version = 1;
    private Optional<MixPlan> wanted = Optional.empty();
    private boolean isPaused;

    /**
     * Begins to play the song alone; the speakers play nothing else meanwhile.
     *
     * @param clicks a device for the clicks alone; empty = they go with the music
     */
    public LiveBeats(Song song, Speakers speakers, Optional<Speakers> clicks, Delays delays) {
        this(song, speakers, clicks, delays, 0, Optional.empty());
    }

    /**
     * Begins to play at a place in the song.
     *
     * @param clicks  a device for the clicks alone; empty = they go with the music
     * @param clicked the beats that are clicked from the first moment on; empty = none
     */
    public LiveBeats(
            Song song,
            Speakers speakers,
            Optional<Speakers> clicks,
            Delays delays,
            double fromSeconds,
            Optional<BeatGrid> clicked) {
        this.song = song;
        rate = song.pcm().rate();
        outputs = Outputs.ofPractice(speakers, clicks, delays, rate);
        MixPlan plan = clicked.map(beats -> ClickedSong.plan(song, beats))
                .orElseGet(() -> ClickedSong.planWithoutClicks(song));
        outputs.begin(version, plan, held(fromSeconds), Optional.empty());
    }

    /** The place in the song that is heard now. */
    public double heardSeconds() {
        long output = outputs.heardFrame();
        return rate.secondsAt(outputs.route().pieceAt(output).songFrameAt(output));
    }

    /** From now on clicks at these beats are heard. */
    public void click(BeatGrid beats) {
        order(ClickedSong.plan(song, beats));
    }

    /** From now on the song alone is heard. */
    public void clickNothing() {
        order(ClickedSong.planWithoutClicks(song));
    }

    private void order(MixPlan plan) {
        wanted = Optional.of(plan);
        tick();
    }

    /** To be called some times a second: obeys an order that had to wait for the one before it. */
    public void tick() {
        outputs.keepTogether();
        boolean isUnderWay = outputs.route().last().change() != version;
        if (wanted.isEmpty() || (isUnderWay && !isPaused)) {
            return;
        }
        version++;
        MixPlan plan = wanted.get();
        wanted = Optional.empty();
        if (isPaused) {
            outputs.begin(version, plan, rate.frameAt(heardSeconds()), Optional.empty());
        } else {
            long at = outputs.nextFrame() + rate.frameAt(PLANNING_SECONDS);
            outputs.change(new Change(version, at, plan, at, Optional.empty()));
        }
    }

    /** Goes to a place in the song, at once; held within it. */
    public void goTo(double seconds, BeatGrid clicked) {
        version++;
        wanted = Optional.empty();
        outputs.begin(version, ClickedSong.plan(song, clicked), held(seconds), Optional.empty());
    }

    private long held(double seconds) {
        return Math.max(0, Math.min(song.pcm().lengthFrames() - 1, rate.frameAt(seconds)));
    }

    public boolean isPaused() {
        return isPaused;
    }

    public void pause() {
        isPaused = true;
        outputs.pause();
    }

    public void resume() {
        isPaused = false;
        outputs.resume();
    }

    public boolean hasEnded() {
        return outputs.hasEnded();
    }
}
