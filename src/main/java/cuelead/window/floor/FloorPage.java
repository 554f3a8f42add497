package cuelead.window.floor;

import cuelead.practice.Wish;
import cuelead.report.Problem;
import cuelead.steer.Ask;
import cuelead.steer.DeviceChoice;
import cuelead.steer.Moment;
import cuelead.steer.Order;
import cuelead.steer.PlayState;
import cuelead.time.Tempo;
import cuelead.window.frame.Course;
import cuelead.window.frame.FoundProblem;
import cuelead.window.frame.Host;
import cuelead.window.frame.Page;
import cuelead.window.frame.PageName;
import cuelead.window.frame.Palette;
import java.awt.BorderLayout;
import java.awt.Cursor;
import java.awt.Point;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import javax.swing.Timer;

/** The page on which a dance is practised. */
public final class FloorPage implements Page, Player.Follower {
    private static final int MOUSE_RESTS_MILLIS = 3000;

    private final JPanel page = new JPanel(new BorderLayout());
    private final FloorView floor = new FloorView();
    private final Host host;
    private final Player player;
    private final Runnable back;
    private final Consumer<Boolean> changed;
    private final FloorControls controls;
    private final Timer resting = new Timer(MOUSE_RESTS_MILLIS, rests -> showControls());
    private Optional<PlayState> first = Optional.empty();
    private Optional<PlayState> seen = Optional.empty();
    private Optional<Integer> seenPass = Optional.empty();
    private boolean isAlone;
    private FloorPlan.Motion motion;

    /**
     * An empty floor.
     *
     * @param isStill whether nothing pulses with the beat
     * @param moved   is told that when it has changed
     * @param back    is called where the user leaves the floor by its keys
     */
    public FloorPage(Host host, boolean isStill, Runnable back, Consumer<Boolean> moved) {
        motion = isStill ? FloorPlan.Motion.STILL : FloorPlan.Motion.WITH_THE_BEAT;
        changed = moved;
        this.host = host;
        this.back = back;
        player = new Player(host.means().places(), host.means().devices(), this);
        page.add(floor);
        controls = new FloorControls(this::ask);
        controls.setVisible(false);
        page.add(controls, BorderLayout.SOUTH);
        resting.setRepeats(false);
        MouseAdapter mouse = new MouseAdapter() {
            @Override
            public void mouseMoved(MouseEvent moved) {
                FloorPage.this.moved();
            }

            @Override
            public void mousePressed(MouseEvent pressed) {
                floor.requestFocusInWindow();
                floor.sectionsTo(pressed.getPoint()).ifPresent(sections -> ask(new Ask.ToSection(sections)));
            }
        };
        floor.addMouseMotionListener(mouse);
        floor.addMouseListener(mouse);
        floor.addKeyListener(new Keys());
        look(host.palette());
    }

    /** Goes through a dance, in place of what plays. */
    public void practise(Wish wish, DeviceChoice devices, Course course) {
        host.hushOthers(this);
        host.tell("");
        keep();
        player.play(wish, devices, course);
        floor.clear(); // or what played before stands there as if it went on
        floor.getReady();
        floor.waiting("Making it ready", 0);
        showControls();
    }

    /** Makes an end of what plays. */
    public void stop() {
        player.stop();
        keep();
        floor.clear();
        showControls();
    }

    /** The floor has the whole screen, or no longer: then controls come only while the mouse moves. */
    public void wholeScreen(boolean isWhole) {
        isAlone = isWhole;
        showControls();
    }

    private void showControls() {
        boolean isMoved = resting.isRunning();
        controls.setVisible(player.isPlaying() && (!isAlone || isMoved));
        floor.setCursor(
                isAlone && !isMoved
                        ? page.getToolkit()
                                .createCustomCursor(
                                        new BufferedImage(1, 1, BufferedImage.TYPE_INT_ARGB), new Point(), "none")
                        : Cursor.getDefaultCursor());
    }

    private void moved() {
        boolean wasResting = !resting.isRunning();
        resting.restart();
        if (isAlone && wasResting) {
            showControls();
        }
    }

    @Override
    public JComponent view() {
        return page;
    }

    @Override
    public void enter() {
        if (!player.isPlaying()) {
            floor.idle(
                    host.inHand().isDance() ? "Space begins: " + host.inHand().title() : "Choose a dance on page 1.");
        }
        floor.requestFocusInWindow();
    }

    @Override
    public void fallSilent() {
        stop();
    }

    @Override
    public void look(Palette palette) {
        floor.look(palette, motion);
    }

    private void motionOrNot() {
        motion = motion == FloorPlan.Motion.STILL ? FloorPlan.Motion.WITH_THE_BEAT : FloorPlan.Motion.STILL;
        look(host.palette());
        changed.accept(motion == FloorPlan.Motion.STILL);
    }

    private final class Keys extends KeyAdapter {
        @Override
        public void keyPressed(KeyEvent key) {
            if (key.getKeyCode() == KeyEvent.VK_F9) {
                motionOrNot();
            } else if (key.getKeyCode() == KeyEvent.VK_ESCAPE) {
                escape();
            } else {
                Strokes.pressed(key).ifPresent(FloorPage.this::ask);
            }
        }

        @Override
        public void keyTyped(KeyEvent key) {
            Strokes.typed(key).ifPresent(FloorPage.this::ask);
        }
    }

    private void escape() {
        if (floor.showsKeys()) {
            floor.keysOrNot();
        } else {
            back.run();
        }
    }

    private void ask(Ask ask) {
        if (ask == Order.HELP) {
            floor.keysOrNot();
        } else if (ask == Order.QUIT) {
            back.run();
        } else if (player.isPlaying()) {
            player.ask(ask);
        } else if (ask == Order.PAUSE_OR_GO_ON) {
            host.practise(host.inHand().hasSong() ? Course.TO_THE_SONG : Course.TO_CLICKS);
        }
        floor.requestFocusInWindow();
    }

    @Override
    public void at(String work, double done) {
        SwingUtilities.invokeLater(() -> floor.waiting(work, done));
    }

    @Override
    public void begun(List<Problem> problems, Tempo full, List<String> passes) {
        host.tell(told(problems));
        SwingUtilities.invokeLater(() -> controls.begin(full, passes));
    }

    /** What might be heard; the rest is told with the sheet. */
    private static String told(List<Problem> problems) {
        List<Problem> grave = problems.stream()
                .filter(problem -> problem.severity() != Problem.Severity.NOTE)
                .toList();
        String more = grave.size() > 1 ? " (" + (grave.size() - 1) + " more: the page Dance lists them.)" : "";
        return grave.isEmpty() ? "" : FoundProblem.told(grave.get(0)) + more;
    }

    /** The controls change when something is ordered, not with the music. */
    @Override
    public void shown(FloorScene scene, Moment moment) {
        floor.show(scene);
        Optional<PlayState> state = Optional.of(moment.state());
        Optional<Integer> pass = Optional.of(moment.pass().pass());
        if (!state.equals(seen) || !pass.equals(seenPass)) {
            first = first.or(() -> state);
            seen = state;
            seenPass = pass;
            SwingUtilities.invokeLater(() -> {
                controls.show(moment);
                showControls();
            });
        }
    }

    /** What was chosen while it played is what is begun with the next time. */
    private void keep() {
        if (first.isPresent() && seen.isPresent()) {
            host.inHand().choose(host.inHand().choices().after(first.get(), seen.get()));
        }
        first = Optional.empty();
        seen = Optional.empty();
    }

    @Override
    public void told(String sentence) {
        host.tell(sentence);
    }

    @Override
    public void over(Optional<String> refusal) {
        SwingUtilities.invokeLater(() -> {
            keep();
            floor.clear();
            showControls();
            refusal.ifPresent(host::tell);
            if (refusal.isPresent()) {
                host.turnTo(PageName.DANCE);
            }
        });
    }
}
