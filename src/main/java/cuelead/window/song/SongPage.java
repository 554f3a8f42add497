package cuelead.window.song;

import cuelead.dance.Dance;
import cuelead.practice.Progress;
import cuelead.practice.SongPlace;
import cuelead.practice.Wish;
import cuelead.report.Refused;
import cuelead.sheet.SheetFile;
import cuelead.song.BeatFile;
import cuelead.song.Ear;
import cuelead.song.Hearing;
import cuelead.song.Hearing.Stretch;
import cuelead.song.TapRun;
import cuelead.song.TapsInHand;
import cuelead.steer.Told;
import cuelead.time.BeatGrid;
import cuelead.window.frame.Controls;
import cuelead.window.frame.Course;
import cuelead.window.frame.Drop;
import cuelead.window.frame.Host;
import cuelead.window.frame.InHand;
import cuelead.window.frame.Page;
import cuelead.window.frame.PageName;
import cuelead.window.frame.Palette;
import cuelead.window.song.Selected.Reach;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.FileDialog;
import java.awt.Frame;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalInt;
import javax.swing.BorderFactory;
import javax.swing.Box;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;
import javax.swing.Timer;

/** The page of the song. Used on the thread of events. */
public final class SongPage implements Page, Drop.Taker, SongPlay.Follower {
    private static final int FACTS_WIDTH = 300;
    private static final int TAPS_MILLIS = 100;
    /** Whoever taps wants to hear the beat first. */
    private static final int BEATS_BEFORE_TAPS = 4;

    private static final String NO_BEAT =
            "No steady beat was heard in this song: press \"Tap along\", and tap it.";

    private final Host host;
    private final JPanel page = new JPanel(new BorderLayout(14, 6));
    private final SongView view = new SongView();
    private final JLabel name = Controls.title(" ", 1.25);
    private final JLabel where = new JLabel(" ");
    private final JTextArea facts = Controls.sentences("What was found out about the song");
    private final JButton findAgain = Controls.button("Find the beats", 'F', this::find);
    private final SongActions actions = new SongActions(this::ask, this::soundOtherwise);
    private final SongPlay play = new SongPlay(this);
    private final TapsInHand taps = new TapsInHand();
    private final Timer tapping = new Timer(TAPS_MILLIS, look -> lookAtTaps());
    private Optional<SongInHand> song = Optional.empty();
    private Optional<Path> wanted = Optional.empty();
    private Optional<Ear> ear = Optional.empty();
    private boolean wasPaused;
    /** Where the user has pointed, so that what is selected does not wander when beats change. */
    private double chosenSeconds;

    private double chosenAnchorSeconds;
    /** Whether the user has pointed elsewhere since it plays. */
    private boolean hasMoved;

    /** Without a song. */
    public SongPage(Host host) {
        this.host = host;
        JButton choose = Controls.button("Choose a song\u2026", 'O', this::choose);
        JComponent top = Controls.line(name, Box.createHorizontalGlue(), choose, findAgain);
        facts.setTransferHandler(new Drop(this));
        JScrollPane factsScroll = new JScrollPane(facts);
        factsScroll.setBorder(BorderFactory.createEmptyBorder());
        factsScroll.setPreferredSize(new Dimension(FACTS_WIDTH, 100));
        JScrollPane rows = new JScrollPane(view);
        rows.setBorder(BorderFactory.createEmptyBorder());
        JPanel below = new JPanel(new BorderLayout(0, 6));
        below.add(where, BorderLayout.NORTH);
        below.add(actions);
        page.add(top, BorderLayout.NORTH);
        page.add(rows);
        page.add(factsScroll, BorderLayout.EAST);
        page.add(below, BorderLayout.SOUTH);
        page.setBorder(BorderFactory.createEmptyBorder(6, 28, 2, 28));
        page.setTransferHandler(new Drop(this));
        view.addKeyListener(new Keys());
        Mouse mouse = new Mouse();
        view.addMouseListener(mouse);
        view.addMouseMotionListener(mouse);
        look(host.palette());
        show();
    }

    @Override
    public JComponent view() {
        return page;
    }

    @Override
    public void enter() {
        InHand inHand = host.inHand();
        try {
            Optional<Path> file = inHand.song().isPresent()
                            || inHand.namedSong().isEmpty()
                            || inHand.sheet().isEmpty()
                    ? inHand.song()
                    : Optional.of(SongPlace.find(
                            inHand.namedSong(),
                            inHand.sheet().get(),
                            host.means().places().working()));
            if (file.isPresent()) {
                load(file.get());
            }
        } catch (Refused refused) {
            host.tell(refused.getMessage());
        }
        view.requestFocusInWindow();
    }

    @Override
    public void fallSilent() {
        endTapping();
        play.stop();
        view.playing(OptionalInt.empty());
        show();
    }

    @Override
    public void look(Palette palette) {
        view.look(palette);
    }

    /** A song and the dance to it. */
    private record Loaded(LoadedSong song, Optional<Dance> dance) {}

    private void load(Path file) throws Refused {
        boolean isThere = isThere(file);
        if (!isThere) {
            fallSilent();
            song = Optional.empty();
            view.clear();
            name.setText(String.valueOf(file.getFileName()));
        }
        wanted = Optional.of(file);
        show();
        Optional<Path> sheet = host.inHand().sheet();
        boolean isEasy = host.inHand().choices().way() == Wish.Way.EASIER;
        if (isThere) {
            host.work("Reading the sheet", progress -> dance(sheet, isEasy), this::danceRead);
        } else {
            host.work(
                    "Listening to the song",
                    progress -> new Loaded(
                            LoadedSong.load(file, host.means().places(), ear(progress), progress),
                            dance(sheet, isEasy)),
                    this::loaded);
        }
    }

    /** Whether it is open, and nobody else has changed its beats meanwhile. */
    private boolean isThere(Path file) throws Refused {
        return song.isPresent()
                && song.get().song().file().equals(file)
                && song.get().song().kept().isAsLeft();
    }

    private synchronized Ear ear(Progress progress) {
        progress.at("Listening to the song", 0);
        Ear one = ear.orElseGet(Ear::new);
        ear = Optional.of(one);
        return one;
    }

    /** What is wrong with the sheet is told by its own page. */
    private static Optional<Dance> dance(Optional<Path> sheet, boolean isEasy) {
        try {
            Optional<Dance> read =
                    sheet.isPresent() ? SheetFile.read(sheet.get()).dance() : Optional.empty();
            return read.map(dance -> isEasy ? dance.easy() : dance);
        } catch (Refused unreadable) {
            return Optional.empty();
        }
    }

    private void loaded(Loaded loaded) {
        if (wanted.filter(loaded.song().file()::equals).isPresent()) {
            song = Optional.of(new SongInHand(loaded.song(), loaded.dance()));
            show();
            select(Selected.at(firstBeat()));
            Path file = loaded.song().file();
            host.work("Reading the song", progress -> Outline.of(file), outline -> {
                if (wanted.equals(Optional.of(file))) {
                    view.show(outline);
                }
            });
        }
    }

    private void danceRead(Optional<Dance> dance) {
        song.ifPresent(now -> now.dance(dance));
        show();
    }

    /** Count 1 of the dance, else the first 1 of the song. */
    private int firstBeat() {
        return song.map(now -> now.timeline()
                        .map(timeline -> (int) timeline.countOne().beatIndex())
                        .orElse(now.beats().firstDownbeat()))
                .map(beat -> Math.max(0, Math.min(view.rows().map(Rows::beats).orElse(1) - 1, beat)))
                .orElse(0);
    }

    /** Shows the song as it is now. */
    private void show() {
        song.ifPresentOrElse(
                now -> {
                    view.show(Rows.of(now.hearing(), now.timeline()));
                    facts.setText(String.join("\n\n", SongFactLines.of(now)));
                    facts.setCaretPosition(0);
                },
                () -> facts.setText(
                        wanted.isPresent()
                                ? "The beats of this song are not known yet: they are being found, or press \"Find the"
                                        + " beats\"."
                                : "Choose a song, or drop it here: its beats are found, and can be put right by ear."));
        enable();
        tellWhere();
    }

    private void enable() {
        boolean isSong = song.isPresent();
        for (SongOrder order : SongOrder.values()) {
            actions.enable(order, isSong);
        }
        actions.enable(SongOrder.BEGINS_HERE, song.flatMap(SongInHand::dance).isPresent());
        actions.enable(SongOrder.TAKE_BACK, song.filter(SongInHand::canTakeBack).isPresent());
        actions.enable(SongOrder.DO_AGAIN, song.filter(SongInHand::canDoAgain).isPresent());
        actions.enableCalls(song.flatMap(SongInHand::dance).isPresent());
        boolean isHeard = play.isPlaying() && !play.isPaused();
        actions.name(SongOrder.PLAY, isHeard && !tapping.isRunning() ? "Pause" : "Play");
        actions.name(SongOrder.TAP, tapping.isRunning() ? "End tapping" : "Tap along");
        findAgain.setEnabled(wanted.isPresent());
    }

    private void tellWhere() {
        where.setText(song.isEmpty() ? " " : tapping.isRunning() ? tapWords() : selectedWords());
        view.getAccessibleContext().setAccessibleDescription(where.getText());
    }

    private String selectedWords() {
        Selected selected = view.selected();
        BeatGrid beats = song.orElseThrow().beats();
        return selected.isStretch()
                ? Told.number(selected.last() - selected.first() + 1, "beat") + " selected, from "
                        + Told.minutes(beats.beatSeconds(selected.first())) + " to "
                        + Told.minutes(beats.beatSeconds(selected.last()))
                        + ": what you put right holds for them alone. Escape leaves them."
                : "The beat at " + Told.minutes(beats.beatSeconds(selected.beat()))
                        + " is selected: what you put right holds for the whole song. Shift selects a stretch.";
    }

    private String tapWords() {
        return "Tap the space bar on every beat for some bars, first on a 1; then stop, and your beat goes on"
                + " from there. " + Told.number(taps.count(), "tap") + ".";
    }

    private void ask(SongOrder order) {
        if (song.isPresent()) {
            try {
                obey(order, song.get());
            } catch (Refused refused) {
                host.tell(refused.getMessage());
            }
            view.requestFocusInWindow();
        }
    }

    private void obey(SongOrder order, SongInHand now) throws Refused {
        BeatGrid before = now.beats();
        switch (order) {
            case PLAY -> playOrPause();
            case TAP -> tapOrNot();
            case ONE_IS_HERE -> now.oneAt(view.selected().beat(), stretch());
            case BEGINS_HERE -> now.beginAt(view.selected().beat());
            case TAKE_BACK -> now.takeBack();
            case DO_AGAIN -> now.doAgain();
            default -> now.change(order.correction().orElseThrow(), stretch());
        }
        if (order != SongOrder.PLAY && order != SongOrder.TAP) {
            changed(before, now);
        }
    }

    /** What was shown is shown again, and heard. */
    private void changed(BeatGrid before, SongInHand now) {
        host.tell(keptWords(now));
        show();
        view.select(Selected.nearest(chosenSeconds, chosenAnchorSeconds, now.beats()));
        tellWhere();
        if (play.isPlaying() && !actions.isCalled()) {
            play.click(clicked());
        } else if (play.isPlaying()) {
            playFrom(play.heardSeconds().orElse(before.beatSeconds(0)));
        }
    }

    private static String keptWords(SongInHand now) {
        boolean isElsewhere = !now.file().equals(BeatFile.beside(now.song().file()));
        return now.canTakeBack() && isElsewhere
                ? "The song's own folder cannot be written, so its beats are kept in " + now.file() + "."
                : "";
    }

    private Optional<Stretch> stretch() {
        return view.selected().stretch(song.orElseThrow().beats());
    }

    private Optional<BeatGrid> clicked() {
        return actions.isClicked() && !tapping.isRunning() ? song.map(SongInHand::beats) : Optional.empty();
    }

    private void playOrPause() {
        if (tapping.isRunning()) {
            return;
        }
        boolean isElsewhere = play.isPaused() && hasMoved;
        if (play.isPlaying() && !isElsewhere) {
            play.pauseOrGoOn();
        } else {
            playFromSelected(0);
        }
    }

    private void playFromSelected(int beatsBefore) {
        int beat = Math.max(0, view.selected().first() - beatsBefore);
        playFrom(song.orElseThrow().beats().beatSeconds(beat));
        hasMoved = false;
    }

    private void playFrom(double seconds) {
        host.hushOthers(this);
        SongInHand now = song.orElseThrow();
        Path file = now.song().file();
        Optional<BeatGrid> clicked = clicked();
        Optional<Path> sheet = host.inHand().sheet();
        boolean isCalled = actions.isCalled() && !tapping.isRunning() && sheet.isPresent();
        Wish.Click click = clicked.isPresent() ? Wish.Click.EVERY_BEAT : Wish.Click.SILENT;
        SongPlay.Begins begins = isCalled
                ? speakers -> CalledSounding.begin(
                        host.inHand()
                                .choices()
                                .atOwnSpeed()
                                .wish(sheet.get(), Optional.of(file), Course.TO_THE_SONG)
                                .from(seconds, click),
                        host.means().places(),
                        speakers,
                        Progress.UNTOLD)
                : speakers -> ClickedSounding.begin(file, speakers, seconds, clicked);
        play.play(
                begins,
                rate -> host.inHand()
                        .choices()
                        .devices(host.means().devices())
                        .open(host.means().devices(), rate));
        enable();
    }

    private void soundOtherwise() {
        if (play.isPlaying()) {
            play.heardSeconds().ifPresent(this::playFrom);
        }
        view.requestFocusInWindow();
    }

    private void tapOrNot() {
        if (tapping.isRunning()) {
            taps.endedNow(song.orElseThrow().beats()).ifPresent(this::carry);
            endTapping();
            play.stop();
            view.playing(OptionalInt.empty());
        } else {
            taps.forget();
            tapping.start();
            playFromSelected(BEATS_BEFORE_TAPS);
        }
        enable();
        tellWhere();
    }

    private void endTapping() {
        tapping.stop();
        taps.forget();
    }

    /** @param agoSeconds how long ago the key went down */
    private void tap(double agoSeconds) {
        play.heardSeconds().ifPresent(now -> taps.tap(now - agoSeconds));
        tellWhere();
    }

    private void lookAtTaps() {
        play.heardSeconds()
                .flatMap(now -> taps.ended(now, song.orElseThrow().beats()))
                .ifPresent(this::carry);
        tellWhere();
    }

    private void carry(TapRun run) {
        SongInHand now = song.orElseThrow();
        Optional<Stretch> within = stretch();
        tapping.stop();
        enable();
        host.work(
                "Carrying your beat through the song",
                progress -> run.through(now.song().file(), ear(progress)),
                tapped -> {
                    BeatGrid before = now.beats();
                    try {
                        now.use(tapped, within);
                        changed(before, now);
                        host.tell(TapWords.of(tapped.carried()));
                    } catch (Refused refused) {
                        host.tell(refused.getMessage());
                    }
                });
    }

    private void find() {
        song.ifPresentOrElse(this::findAgain, this::enter);
    }

    private void findAgain(SongInHand now) {
        boolean isAgreed = !now.isUsers()
                || JOptionPane.showConfirmDialog(
                                page,
                                "These beats were put right by hand. Listen again all the same?\n"
                                        + "\"Take back\" brings them back.",
                                "Find the beats",
                                JOptionPane.OK_CANCEL_OPTION)
                        == JOptionPane.OK_OPTION;
        if (isAgreed) {
            host.work(
                    "Listening to the song",
                    progress -> heardAgain(now, progress),
                    heard -> heard.ifPresentOrElse(
                            hearing -> use(hearing, now),
                            () -> host.tell(NO_BEAT)));
        }
    }

    private Optional<Hearing> heardAgain(SongInHand now, Progress progress) throws Refused {
        return ear(progress).listen(now.song().file(), done -> progress.at("Listening to the song", done));
    }

    private void use(Hearing hearing, SongInHand now) {
        BeatGrid before = now.beats();
        try {
            now.hear(hearing);
            changed(before, now);
        } catch (Refused refused) {
            host.tell(refused.getMessage());
        }
    }

    @Override
    public void heard(double songSeconds, boolean isPaused) {
        SwingUtilities.invokeLater(() -> {
            if (play.isPlaying() && song.isPresent()) {
                BeatGrid beats = song.get().beats();
                long beat = beats.positionAt(songSeconds).beatIndex();
                boolean isOnABeat = beat >= 0 && beat < beats.size();
                view.playing(isOnABeat ? OptionalInt.of((int) beat) : OptionalInt.empty());
                if (isPaused != wasPaused) {
                    wasPaused = isPaused;
                    enable();
                }
            }
        });
    }

    @Override
    public void over(Optional<String> refusal) {
        SwingUtilities.invokeLater(() -> {
            endTapping();
            view.playing(OptionalInt.empty());
            refusal.ifPresent(host::tell);
            enable();
            tellWhere();
        });
    }

    @Override
    public void told(String sentence) {
        host.tell(sentence);
    }

    private void choose() {
        FileDialog dialog =
                new FileDialog((Frame) SwingUtilities.getWindowAncestor(page), "Choose a song", FileDialog.LOAD);
        dialog.setVisible(true);
        if (dialog.getFile() != null) {
            song(Path.of(dialog.getDirectory(), dialog.getFile()));
        }
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

    private final class Keys extends KeyAdapter {
        @Override
        public void keyPressed(KeyEvent key) {
            if (tapping.isRunning() && key.getKeyCode() == KeyEvent.VK_SPACE) {
                tap(Math.max(0, System.currentTimeMillis() - key.getWhen()) / 1000.0);
            } else if (key.getKeyCode() == KeyEvent.VK_ESCAPE) {
                escape();
            } else {
                view.rows()
                        .flatMap(rows -> SongKeys.moved(key, view.selected(), rows))
                        .ifPresentOrElse(
                                SongPage.this::select, () -> SongKeys.order(key).ifPresent(SongPage.this::ask));
            }
        }
    }

    private void escape() {
        fallSilent();
        select(Selected.at(view.selected().beat()));
    }

    private void select(Selected selected) {
        song.map(SongInHand::beats).ifPresent(beats -> {
            chosenSeconds = beats.beatSeconds(selected.beat());
            chosenAnchorSeconds = beats.beatSeconds(selected.anchor());
        });
        hasMoved = true;
        view.select(selected);
        tellWhere();
    }

    private final class Mouse extends MouseAdapter {
        @Override
        public void mousePressed(MouseEvent pressed) {
            view.requestFocusInWindow();
            point(pressed, pressed.isShiftDown() ? Reach.A_STRETCH : Reach.A_BEAT);
        }

        @Override
        public void mouseDragged(MouseEvent dragged) {
            point(dragged, Reach.A_STRETCH);
        }

        private void point(MouseEvent at, Reach reach) {
            view.rows()
                    .ifPresent(rows -> view.beatAt(at.getX(), at.getY())
                            .ifPresent(beat -> select(view.selected().to(beat, reach, rows))));
        }
    }
}
