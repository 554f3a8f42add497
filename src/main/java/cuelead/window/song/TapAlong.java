package cuelead.window.song;

import cuelead.song.TapRun;
import cuelead.song.TapsInHand;
import cuelead.steer.Told;
import cuelead.time.BeatGrid;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.Timer;

/** Taps along with a song that plays. Used on the thread of events. */
final class TapAlong {
    private static final int LOOK_MILLIS = 100;

    private final TapsInHand taps = new TapsInHand();
    private final Timer looking = new Timer(LOOK_MILLIS, look -> look());
    private final Supplier<Optional<Double>> heard;
    private final Supplier<BeatGrid> beats;
    private final Consumer<TapRun> carry;

    /**
     * Not yet.
     *
     * @param heard the place in the song that is heard; empty while none is
     * @param beats those of the song
     * @param carry is given the taps when they have ended
     */
    TapAlong(Supplier<Optional<Double>> heard, Supplier<BeatGrid> beats, Consumer<TapRun> carry) {
        this.heard = heard;
        this.beats = beats;
        this.carry = carry;
    }

    boolean isOn() {
        return looking.isRunning();
    }

    void begin() {
        taps.forget();
        looking.start();
    }

    /** @param agoSeconds how long ago the key went down */
    void tap(double agoSeconds) {
        heard.get().ifPresent(now -> taps.tap(now - agoSeconds));
    }

    private void look() {
        heard.get().flatMap(now -> taps.ended(now, beats.get())).ifPresent(this::carry);
    }

    private void carry(TapRun run) {
        looking.stop();
        carry.accept(run);
    }

    /** The user says that there will be no more taps. */
    void end() {
        looking.stop();
        taps.endedNow(beats.get()).ifPresent(this::carry);
        taps.forget();
    }

    /** None of them counts. */
    void breakOff() {
        looking.stop();
        taps.forget();
    }

    String words() {
        return "Tap the space bar on every beat for some bars, first on a 1; then stop, and your beat goes on through the"
                + " song. " + Told.number(taps.count(), "tap") + ".";
    }
}
