package cuelead.window.floor;

import cuelead.practice.Wish;
import cuelead.report.Problem;
import cuelead.steer.DeviceChoice;
import cuelead.steer.Order;
import cuelead.window.frame.Host;
import cuelead.window.frame.Page;
import cuelead.window.frame.PageName;
import cuelead.window.frame.Palette;
import java.awt.BorderLayout;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;

/** The page on which a dance is practised. */
public final class FloorPage implements Page, Player.Follower {
    private final JPanel page = new JPanel(new BorderLayout());
    private final FloorView floor = new FloorView();
    private final Host host;
    private final Player player;
    private final Runnable back;
    private FloorPlan.Motion motion = FloorPlan.Motion.WITH_THE_BEAT;

    /**
     * An empty floor.
     *
     * @param back is called where the user leaves the floor by its keys
     */
    public FloorPage(Host host, Runnable back) {
        this.host = host;
        this.back = back;
        player = new Player(host.means().places(), host.means().devices(), this);
        page.add(floor);
        floor.addKeyListener(new Keys());
        look(host.palette());
    }

    /** Makes a practice ready, and plays it in place of what plays. */
    public void practise(Wish wish, DeviceChoice devices) {
        host.hushOthers(this);
        host.tell("");
        player.play(wish, devices);
    }

    /** Makes an end of what plays. */
    public void stop() {
        player.stop();
        floor.clear();
    }

    @Override
    public JComponent view() {
        return page;
    }

    @Override
    public void enter() {
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
    }

    private final class Keys extends KeyAdapter {
        @Override
        public void keyPressed(KeyEvent key) {
            if (key.getKeyCode() == KeyEvent.VK_F9) {
                motionOrNot();
            } else if (key.getKeyCode() == KeyEvent.VK_ESCAPE) {
                back.run();
            } else {
                Strokes.pressed(key).ifPresent(this::ask);
            }
        }

        @Override
        public void keyTyped(KeyEvent key) {
            Strokes.typed(key).ifPresent(this::ask);
        }

        private void ask(Order order) {
            switch (order) {
                case HELP -> floor.keysOrNot();
                case QUIT -> back.run();
                default -> player.ask(order);
            }
        }
    }

    @Override
    public void at(String work, double done) {
        SwingUtilities.invokeLater(() -> floor.waiting(work, done));
    }

    @Override
    public void begun(List<Problem> problems) {
        host.tell(problems.stream().map(Problem::message).collect(Collectors.joining("\n")));
    }

    @Override
    public void shown(FloorScene scene) {
        floor.show(scene);
    }

    @Override
    public void told(String sentence) {
        host.tell(sentence);
    }

    @Override
    public void over(Optional<String> refusal) {
        SwingUtilities.invokeLater(() -> {
            floor.clear();
            refusal.ifPresent(host::tell);
            if (refusal.isPresent()) {
                host.turnTo(PageName.DANCE);
            }
        });
    }
}
