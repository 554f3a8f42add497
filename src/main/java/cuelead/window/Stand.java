package cuelead.window;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import cuelead.practice.Places;
import cuelead.report.Problem;
import cuelead.steer.Order;
import cuelead.steer.SoundDevices;
import java.awt.CardLayout;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.GraphicsDevice;
import java.awt.GraphicsEnvironment;
import java.awt.Rectangle;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.stream.Collectors;
import javax.swing.JFrame;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import javax.swing.WindowConstants;

/** The window. Used on the thread of events, but for {@link #open}. */
public final class Stand implements Player.Follower {
    private static final String NAME = "Cuelead";
    private static final String START = "start";
    private static final String FLOOR = "floor";

    private final JFrame frame = new JFrame(NAME);
    private final CardLayout cards = new CardLayout();
    private final JPanel pages = new JPanel(cards);
    private final FloorView floor = new FloorView();
    private final StartPage start;
    private final Player player;
    private Palette palette = Palette.DARK;
    private FloorPlan.Motion motion = FloorPlan.Motion.WITH_THE_BEAT;
    private boolean isOnFloor;

    private Stand(Places places, SoundDevices devices, Optional<Path> demo, Runnable closed) {
        player = new Player(places, devices, this);
        start = new StartPage(
                demo,
                this::practise,
                this::breakOff,
                new PastedSheets(places.cache().resolve("pasted")));
        pages.add(start, START);
        pages.add(floor, FLOOR);
        frame.setContentPane(pages);
        frame.setDefaultCloseOperation(WindowConstants.DISPOSE_ON_CLOSE);
        Rectangle usable = GraphicsEnvironment.getLocalGraphicsEnvironment().getMaximumWindowBounds();
        frame.setMinimumSize(within(usable, 760, 500));
        frame.setSize(within(usable, 1180, 700));
        frame.setLocationRelativeTo(null);
        frame.addWindowListener(new WindowAdapter() {
            @Override
            public void windowClosed(WindowEvent event) {
                player.stop();
                closed.run();
            }
        });
        floor.addKeyListener(new Keys());
        floor.look(palette, motion);
    }

    /**
     * Opens the window, and waits until it is closed. On any thread but that of events.
     *
     * @param demo the demo's sheet, where it is there
     */
    public static void open(Places places, SoundDevices devices, Optional<Path> demo) throws InterruptedException {
        CountDownLatch closed = new CountDownLatch(1);
        SwingUtilities.invokeLater(() -> {
            try {
                clothe(Palette.DARK);
                new Stand(places, devices, demo, closed::countDown).frame.setVisible(true);
            } catch (RuntimeException | Error mistake) {
                closed.countDown();
                throw mistake;
            }
        });
        closed.await();
    }

    private static Dimension within(Rectangle usable, int width, int height) {
        return new Dimension(Math.min(usable.width, width), Math.min(usable.height, height));
    }

    private static void clothe(Palette palette) {
        FlatLaf.setGlobalExtraDefaults(Map.of(
                "@background", hex(palette.ground()),
                "@foreground", hex(palette.ink()),
                "@accentColor", hex(palette.now()),
                "@componentBackground", hex(palette.field())));
        if (palette.equals(Palette.DARK)) {
            FlatDarkLaf.setup();
        } else {
            FlatLightLaf.setup();
        }
        FlatLaf.updateUI();
    }

    private static String hex(Color colour) {
        return String.format(Locale.ROOT, "#%06x", colour.getRGB() & 0xffffff);
    }

    private void practise(Chosen chosen) {
        frame.setTitle(NAME + ": " + chosen.sheet().getFileName());
        start.told("");
        start.at("making it ready", 0);
        player.play(chosen.wish());
    }

    private void breakOff() {
        player.stop();
        leaveFloor();
    }

    private void page(String name) {
        isOnFloor = name.equals(FLOOR);
        cards.show(pages, name);
        if (isOnFloor) {
            floor.requestFocusInWindow();
        }
    }

    private void look(Palette other, FloorPlan.Motion moves) {
        palette = other;
        motion = moves;
        clothe(palette);
        floor.look(palette, motion);
    }

    private void wholeScreenOrNot() {
        GraphicsDevice screen = frame.getGraphicsConfiguration().getDevice();
        boolean isWhole = screen.getFullScreenWindow() == frame;
        screen.setFullScreenWindow(isWhole ? null : frame);
        floor.requestFocusInWindow();
    }

    private void back() {
        GraphicsDevice screen = frame.getGraphicsConfiguration().getDevice();
        if (screen.getFullScreenWindow() == frame) {
            wholeScreenOrNot();
        } else {
            breakOff();
        }
    }

    private void leaveFloor() {
        floor.clear();
        frame.setTitle(NAME);
        start.idle();
        page(START);
    }

    private final class Keys extends KeyAdapter {
        @Override
        public void keyPressed(KeyEvent key) {
            switch (key.getKeyCode()) {
                case KeyEvent.VK_F11 -> wholeScreenOrNot();
                case KeyEvent.VK_F8 -> look(palette.equals(Palette.DARK) ? Palette.LIGHT : Palette.DARK, motion);
                case KeyEvent.VK_F9 ->
                    look(
                            palette,
                            motion == FloorPlan.Motion.STILL ? FloorPlan.Motion.WITH_THE_BEAT : FloorPlan.Motion.STILL);
                case KeyEvent.VK_ESCAPE -> back();
                default -> Strokes.pressed(key).ifPresent(this::ask);
            }
        }

        @Override
        public void keyTyped(KeyEvent key) {
            Strokes.typed(key).ifPresent(this::ask);
        }

        private void ask(Order order) {
            switch (order) {
                case HELP -> floor.keysOrNot();
                case QUIT -> breakOff();
                default -> player.ask(order);
            }
        }
    }

    @Override
    public void at(String work, double done) {
        SwingUtilities.invokeLater(() -> {
            if (!isOnFloor) {
                start.at(work, done);
            }
        });
    }

    @Override
    public void begun(List<Problem> problems) {
        SwingUtilities.invokeLater(() -> {
            start.idle();
            start.told(problems.stream().map(Problem::message).collect(Collectors.joining("\n")));
            page(FLOOR);
        });
    }

    @Override
    public void shown(FloorScene scene) {
        floor.show(scene);
    }

    @Override
    public void told(String sentence) {
        SwingUtilities.invokeLater(() -> start.told(sentence));
    }

    @Override
    public void over(Optional<String> refusal) {
        SwingUtilities.invokeLater(() -> {
            leaveFloor();
            refusal.ifPresent(start::told);
        });
    }
}
