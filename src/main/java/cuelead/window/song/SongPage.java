package cuelead.window.song;

import cuelead.report.Refused;
import cuelead.song.BeatFile;
import cuelead.song.Hearing;
import cuelead.song.Hearing.Stretch;
import cuelead.song.TapRun;
import cuelead.song.Tapped;
import cuelead.steer.Told;
import cuelead.time.BeatGrid;
import cuelead.window.frame.Drop;
import cuelead.window.frame.FileChoice;
import cuelead.window.frame.Host;
import cuelead.window.frame.Page;
import cuelead.window.frame.PageName;
import cuelead.window.frame.Palette;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalInt;
import javax.swing.JComponent;
import javax.swing.JOptionPane;
import javax.swing.SwingUtilities;

/** The page of the song. Used on the thread of events. */
public final class SongPage implements Page, Drop.Taker, SongPlay.Follower, SongFace.Wanted, Pointing.Follower {
    /** Whoever taps wants to hear the beat first. */
    private static final int BEATS_BEFORE_TAPS = 4;

    private static final String NO_BEAT = "No steady beat was heard in this song: press \"Tap along\", and tap it.";

    private final Host host;
    private final SongFace face = new SongFace(this::ordered, this, this);
    private final Pointing pointing = new Pointing(face.rows(), this);
    private final SongLoading loading;
    private final SongSound sound;
    private final TapAlong tapping;
    private Optional<SongInHand> song = Optional.empty();
    private Optional<Path> wanted = Optional.empty();
    private boolean wasPaused;

    /** Without a song. */
    public SongPage(Host host) {
        this.host = host;
        loading = new SongLoading(host);
        sound = new SongSound(host, this, this);
        tapping = new TapAlong(
                sound.play()::heardSeconds, () -> song.orElseThrow().beats(), this::carry);
        look(host.palette());
        show();
    }

    @Override
    public JComponent view() {
        return face.page();
    }

    @Override
    public void enter() {
        try {
            wanted = loading.wanted();
            if (wanted.isPresent()) {
                open(wanted.get());
            }
        } catch (Refused refused) {
            host.tell(refused.getMessage());
        }
        face.rows().requestFocusInWindow();
    }

    @Override
    public void fallSilent() {
        tapping.breakOff();
        sound.play().stop();
        face.rows().playing(OptionalInt.empty());
        state();
    }

    @Override
    public void look(Palette palette) {
        face.rows().look(palette);
    }

    private void open(Path file) throws Refused {
        if (isThere(file)) {
            loading.dance(dance -> {
                song.ifPresent(now -> now.dance(dance));
                show();
            });
            return;
        }
        fallSilent();
        song = Optional.empty();
        face.rows().clear();
        face.name(String.valueOf(file.getFileName()));
        show();
        loading.open(file, this::opened);
    }

    /** Whether it is open, and nobody else has changed its beats meanwhile. */
    private boolean isThere(Path file) throws Refused {
        return song.isPresent()
                && song.get().song().file().equals(file)
                && song.get().song().kept().isAsLeft();
    }

    private void opened(SongInHand opened) {
        Path file = opened.song().file();
        if (wanted.equals(Optional.of(file))) {
            song = Optional.of(opened);
            show();
            pointing.select(Selected.at(firstBeat(opened)));
            loading.outline(file, outline -> {
                if (wanted.equals(Optional.of(file))) {
                    face.rows().show(outline);
                }
            });
        }
    }

    /** Count 1 of the dance, else the first 1 of the song. */
    private static int firstBeat(SongInHand song) {
        long beat = song.timeline()
                .map(timeline -> timeline.countOne().beatIndex())
                .orElse((long) song.beats().firstDownbeat());
        return (int) Math.max(0, Math.min(song.beats().size() - 1, beat));
    }

    private void show() {
        face.show(song, wanted.isPresent());
        state();
    }

    /** What can be done, and what is selected. */
    private void state() {
        face.enable(song);
        boolean isHeard = sound.play().isPlaying() && !sound.play().isPaused();
        face.actions().name(SongOrder.PLAY, isHeard && !tapping.isOn() ? "Pause" : "Play");
        face.actions().name(SongOrder.TAP, tapping.isOn() ? "End tapping" : "Tap along");
        pointed();
    }

    @Override
    public void pointed() {
        face.where(
                tapping.isOn()
                        ? tapping.words()
                        : song.map(now -> selectedWords(now.beats())).orElse(""));
    }

    private String selectedWords(BeatGrid beats) {
        Selected selected = face.rows().selected();
        return selected.isStretch()
                ? Told.number(selected.last() - selected.first() + 1, "beat") + " selected, from "
                        + Told.minutes(beats.beatSeconds(selected.first())) + " to "
                        + Told.minutes(beats.beatSeconds(selected.last()))
                        + ": what you put right holds for them alone. Escape leaves them."
                : "The beat at " + Told.minutes(beats.beatSeconds(selected.beat()))
                        + " is selected: what you put right holds for the whole song. Shift selects a stretch.";
    }

    @Override
    public void ordered(SongOrder order) {
        if (song.isPresent()) {
            try {
                obey(order, song.get());
            } catch (Refused refused) {
                host.tell(refused.getMessage());
            }
            face.rows().requestFocusInWindow();
        }
    }

    private void obey(SongOrder order, SongInHand now) throws Refused {
        int beat = face.rows().selected().beat();
        switch (order) {
            case PLAY -> playOrPause();
            case TAP -> tapOrNot();
            case ONE_IS_HERE -> now.oneAt(beat, stretch());
            case BEGINS_HERE -> now.beginAt(beat);
            case UNDO -> now.takeBack();
            case REDO -> now.doAgain();
            default -> now.change(order.correction().orElseThrow(), stretch());
        }
        if (order != SongOrder.PLAY && order != SongOrder.TAP) {
            changed(now);
        }
    }

    /** What was shown is shown again, and heard. */
    private void changed(SongInHand now) {
        host.tell(keptWords(now));
        show();
        pointing.stay(now.beats());
        if (sound.play().isPlaying() && isCalled()) {
            soundOtherwise();
        } else {
            sound.play().click(clicked());
        }
    }

    private static String keptWords(SongInHand now) {
        boolean isElsewhere = !now.file().equals(BeatFile.beside(now.song().file()));
        return now.canTakeBack() && isElsewhere
                ? "The song's own folder cannot be written, so its beats are kept in " + now.file() + "."
                : "";
    }

    private Optional<Stretch> stretch() {
        return face.rows().selected().stretch(song.orElseThrow().beats());
    }

    private Optional<BeatGrid> clicked() {
        return face.actions().isClicked() && !tapping.isOn() ? song.map(SongInHand::beats) : Optional.empty();
    }

    private boolean isCalled() {
        return face.actions().isCalled() && !tapping.isOn();
    }

    private void playOrPause() {
        boolean isElsewhere = sound.play().isPaused() && pointing.hasMoved();
        if (sound.play().isPlaying() && !isElsewhere) {
            sound.play().pauseOrGoOn();
        } else {
            playFromSelected(0);
        }
    }

    private void playFromSelected(int beatsBefore) {
        int beat = Math.max(0, face.rows().selected().first() - beatsBefore);
        playFrom(song.orElseThrow().beats().beatSeconds(beat));
        pointing.rest();
    }

    private void playFrom(double seconds) {
        Optional<Path> calls = isCalled() ? host.inHand().sheet() : Optional.empty();
        sound.from(seconds, song.orElseThrow().song().file(), clicked(), calls);
        state();
    }

    @Override
    public void soundOtherwise() {
        sound.play().heardSeconds().ifPresent(this::playFrom);
        face.rows().requestFocusInWindow();
    }

    @Override
    public void space(double agoSeconds) {
        if (tapping.isOn()) {
            tapping.tap(agoSeconds);
            pointed();
        } else {
            ordered(SongOrder.PLAY);
        }
    }

    @Override
    public void escaped() {
        fallSilent();
        pointing.select(Selected.at(face.rows().selected().beat()));
    }

    private void tapOrNot() {
        if (tapping.isOn()) {
            tapping.end();
            fallSilent();
        } else {
            tapping.begin();
            playFromSelected(BEATS_BEFORE_TAPS);
        }
    }

    private void carry(TapRun taps) {
        SongInHand now = song.orElseThrow();
        Optional<Stretch> within = stretch();
        state();
        loading.carry(taps, now.song().file(), tapped -> use(tapped, within, now));
    }

    private void use(Tapped tapped, Optional<Stretch> within, SongInHand now) {
        step(now, () -> {
            now.use(tapped, within);
            return TapWords.of(tapped.carried());
        });
    }

    @Override
    public void findBeats() {
        song.ifPresentOrElse(this::findAgain, this::enter);
    }

    private void findAgain(SongInHand now) {
        if (!now.isUsers() || isAgreed()) {
            loading.hearAgain(
                    now.song().file(),
                    heard -> heard.ifPresentOrElse(hearing -> use(hearing, now), () -> host.tell(NO_BEAT)));
        }
    }

    private boolean isAgreed() {
        return JOptionPane.showConfirmDialog(
                        face.page(),
                        "These beats were put right by hand. Listen again all the same?\n"
                                + "\"Undo\" brings them back.",
                        "Find the beats",
                        JOptionPane.OK_CANCEL_OPTION)
                == JOptionPane.OK_OPTION;
    }

    private void use(Hearing hearing, SongInHand now) {
        step(now, () -> {
            now.hear(hearing);
            return "";
        });
    }

    /** A step that took its time: the song may be another one meanwhile. */
    @FunctionalInterface
    private interface LateStep {
        /** Gives what is told of it; may be empty. */
        String make() throws Refused;
    }

    private void step(SongInHand of, LateStep step) {
        try {
            String told = step.make();
            if (song.equals(Optional.of(of))) {
                changed(of);
            }
            if (!told.isEmpty()) {
                host.tell(told);
            }
        } catch (Refused refused) {
            host.tell(refused.getMessage());
        }
    }

    @Override
    public void heard(double songSeconds, boolean isPaused) {
        SwingUtilities.invokeLater(() -> {
            if (sound.play().isPlaying() && song.isPresent()) {
                light(song.get().beats(), songSeconds);
                if (isPaused != wasPaused) {
                    wasPaused = isPaused;
                    state();
                }
            }
        });
    }

    private void light(BeatGrid beats, double songSeconds) {
        long beat = beats.positionAt(songSeconds).beatIndex();
        boolean isOnABeat = beat >= 0 && beat < beats.size();
        face.rows().playing(isOnABeat ? OptionalInt.of((int) beat) : OptionalInt.empty());
    }

    @Override
    public void over(Optional<String> refusal) {
        SwingUtilities.invokeLater(() -> {
            if (!sound.play().isPlaying()) {
                fallSilent();
            }
            refusal.ifPresent(host::tell);
        });
    }

    @Override
    public void told(String sentence) {
        host.tell(sentence);
    }

    @Override
    public void chooseSong() {
        FileChoice.song(face.page(), host).ifPresent(this::song);
    }

    @Override
    public void song(Path file) {
        host.tell("");
        host.inHand().takeSong(file);
        enter();
    }

    @Override
    public void sheet(Path file) {
        host.inHand().takeSheet(file);
        host.turnTo(PageName.DANCE);
    }

    @Override
    public void text(String text) {
        host.tell("A step sheet is pasted on the page Dance.");
    }
}
