package cuelead.cli;

import cuelead.practice.LiveBeats;
import cuelead.report.Refused;
import cuelead.song.BeatsInHand;
import cuelead.song.Ear;
import cuelead.song.Hearing.Stretch;
import cuelead.song.TapRun;
import cuelead.song.Tapped;
import cuelead.song.Tapped.Carried;
import cuelead.song.TapsInHand;
import cuelead.steer.Told;
import cuelead.time.BeatGrid;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.Executor;

/**
 * Plays a song while its user taps and corrects; says in one line where it is and what was done. Used on one thread, but
 * that taps are carried through the song on another.
 */
final class TapDesk implements KeyedLine.Shown {
    private static final double STEP_SECONDS = 5;

    private final Path song;
    private final LiveBeats live;
    private final BeatsInHand hand;
    private final Optional<Stretch> within;
    private final TapsInHand taps = new TapsInHand();
    private final Ear ear;
    private final Executor background;
    private Optional<CompletableFuture<Tapped>> carrying = Optional.empty();
    private boolean isClicked;
    private boolean isEnded;
    private boolean isKept;
    private String notice = "Tap every beat, beginning with a count 1";

    /**
     * @param within     where the beats are put right; empty = everywhere
     * @param background where taps are carried through the song, which may take some seconds
     */
    TapDesk(Path song, LiveBeats live, BeatsInHand hand, Optional<Stretch> within, Ear ear, Executor background) {
        this.song = song;
        this.live = live;
        this.hand = hand;
        this.within = within;
        this.ear = ear;
        this.background = background;
    }

    /** Whether the user is done, or the song is over; what is to be kept is waited for. */
    @Override
    public boolean isOver() {
        boolean isWaitedFor = isKept && carrying.isPresent();
        return !isWaitedFor && (isEnded || live.hasEnded());
    }

    /** Whether the beats are to be written. */
    boolean isKept() {
        return isKept && hand.isChanged();
    }

    /** Obeys a key stroke. */
    @Override
    public void obey(String stroke) {
        Optional<TapKeys> key = TapKeys.of(stroke);
        if (key.isEmpty()) {
            return;
        }
        try {
            if (key.get().correction().isPresent()) {
                hand.change(key.get().correction().get(), within);
                listenTo("Changed; u takes it back");
            } else {
                obey(key.get());
            }
        } catch (Refused tooFew) {
            notice = tooFew.getMessage();
        }
    }

    private void obey(TapKeys key) throws Refused {
        double now = live.heardSeconds();
        switch (key) {
            case TAP -> tap(now);
            case PAUSE_OR_GO_ON -> pauseOrGoOn();
            case BACK -> live.goTo(now - STEP_SECONDS, clicked());
            case ON -> live.goTo(now + STEP_SECONDS, clicked());
            case ONE_IS_NOW -> {
                hand.oneAt(now, within);
                listenTo("Count 1 is there; u takes it back");
            }
            case UNDO -> {
                boolean isBack = hand.takeBack();
                listenTo(isBack ? "Taken back" : "There is nothing to take back");
            }
            case CLICK -> click();
            case KEEP -> keep();
            default -> {
                isKept = false;
                isEnded = true;
            }
        }
    }

    /** Ends when the last taps, too, are carried through the song: whoever has tapped wants them. */
    private void keep() {
        if (carrying.isEmpty()) {
            taps.endedNow(hand.beats()).ifPresent(this::carry);
        }
        if (carrying.isPresent()) {
            notice = "Carrying your beat through the song, then it is kept ...";
        }
        isKept = true;
        isEnded = true;
    }

    private BeatGrid clicked() {
        isClicked = true;
        return hand.beats();
    }

    private void tap(double now) {
        if (taps.count() == 0) {
            live.clickNothing(); // one's own beat is tapped, not that of a click
            isClicked = false;
        }
        taps.tap(now);
        notice = taps.count() < TapsInHand.FEWEST ? "" : "Stop when you have tapped enough";
    }

    private void pauseOrGoOn() {
        if (live.isPaused()) {
            live.resume();
        } else {
            live.pause();
        }
    }

    private void click() {
        if (isClicked) {
            live.clickNothing();
            isClicked = false;
            notice = "The song alone";
        } else {
            listenTo("A click on every beat, a high one on count 1");
        }
    }

    private void listenTo(String what) {
        live.click(clicked());
        notice = what;
    }

    /** To be called some times a second. */
    @Override
    public void tick() throws Refused {
        live.tick();
        if (carrying.isEmpty()) {
            taps.ended(live.heardSeconds(), hand.beats()).ifPresent(this::carry);
        } else if (carrying.get().isDone()) {
            CompletableFuture<Tapped> done = carrying.get();
            carrying = Optional.empty();
            use(done);
        }
    }

    private void carry(TapRun run) {
        notice = "Carrying your beat through the song ...";
        carrying = Optional.of(CompletableFuture.supplyAsync(
                () -> {
                    try {
                        return run.through(song, ear);
                    } catch (Refused unreadable) {
                        throw new CompletionException(unreadable);
                    }
                },
                background));
    }

    private void use(CompletableFuture<Tapped> done) throws Refused {
        try {
            Tapped tapped = done.join();
            hand.use(tapped, within);
            listenTo(told(tapped.carried()) + ": listen (Enter keep, u back)");
        } catch (CompletionException failed) {
            if (failed.getCause() instanceof Refused unreadable) {
                throw unreadable;
            }
            throw failed;
        }
    }

    private static String told(Carried carried) {
        return switch (carried) {
            case BY_HEARD_BEATS -> "Your beat was found everywhere";
            case BY_LISTENING_AGAIN -> "Heard again at your tempo";
            case EVENLY -> "Nothing fits: your tempo goes on";
        };
    }

    /** {@code 1:02  count 5  104 a minute  3 taps  Your beat was found ...}. */
    @Override
    public String line() {
        double now = live.heardSeconds();
        BeatGrid beats = hand.beats();
        String tapped = taps.count() == 0 ? "" : "   " + Told.number(taps.count(), "tap");
        return (live.isPaused() ? "PAUSED  " : "") + Told.minutesAndSeconds(now) + "   count "
                + count(beats, now) + "   " + Math.round(beats.medianTempo().beatsPerMinute())
                + " beats a minute" + tapped + (notice.isEmpty() ? "" : "   " + notice);
    }

    private static int count(BeatGrid beats, double now) {
        long beat = beats.positionAt(now).beatIndex();
        int index = (int) Math.max(0, Math.min(beats.size() - 1, beat));
        return beats.countInPhrase(index) > 0 ? beats.countInPhrase(index) : beats.beatInBar(index);
    }

    BeatsInHand hand() {
        return hand;
    }
}
