package cuelead.window;

import cuelead.practice.WarmUp;
import cuelead.report.Refused;
import cuelead.window.floor.FloorPage;
import cuelead.window.frame.Choices;
import cuelead.window.frame.Controls;
import cuelead.window.frame.Course;
import cuelead.window.frame.Host;
import cuelead.window.frame.InHand;
import cuelead.window.frame.Job;
import cuelead.window.frame.Means;
import cuelead.window.frame.Memory;
import cuelead.window.frame.Page;
import cuelead.window.frame.PageName;
import cuelead.window.frame.Palette;
import cuelead.window.frame.Recent;
import cuelead.window.frame.Session;
import cuelead.window.frame.Work;
import cuelead.window.rehearse.RehearsePage;
import cuelead.window.sheet.SheetPage;
import cuelead.window.song.SongPage;
import cuelead.window.start.StartPage;
import cuelead.window.tracks.TracksPage;
import cuelead.window.words.WordsPage;
import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.event.ActionEvent;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import javax.swing.WindowConstants;

/** The window: its pages, and what is around them. Used on the thread of events, but for {@link #open}. */
public final class Stand implements Host {
    private static final String NAME = "Cuelead";

    private final JFrame frame = new JFrame(NAME);
    private final CardLayout cards = new CardLayout();
    private final JPanel leaves = new JPanel(cards);
    private final JPanel below = new JPanel(new BorderLayout(12, 4));
    private final JTextArea told = Controls.sentences("What happened");
    private final Work work = new Work(this::tell);
    private final InHand inHand;
    private final Memory memory;
    private final Means means;
    /** A page is made when it is turned to first, so that the window is there at once. */
    private final Map<PageName, Supplier<Page>> makers = new EnumMap<>(PageName.class);

    private final Map<PageName, Page> pages = new EnumMap<>(PageName.class);
    private final Strip strip;
    private final WindowPlace place;
    private PageName front = PageName.DANCE;
    private Palette palette;

    private Stand(Means means, Memory memory, CountDownLatch closed) {
        this.means = means;
        this.memory = memory;
        palette = palette(memory.session());
        inHand = new InHand(memory.session());
        makers.put(
                PageName.DANCE, () -> new StartPage(this, () -> memory.session().recents()));
        makers.put(PageName.SHEET, () -> new SheetPage(this));
        makers.put(PageName.SONG, () -> new SongPage(this));
        makers.put(
                PageName.FLOOR,
                () -> new FloorPage(this, memory.session().isStill(), this::leaveFloor, this::noteStill));
        makers.put(PageName.WORDS, () -> new WordsPage(this));
        makers.put(PageName.REHEARSE, () -> new RehearsePage(this));
        makers.put(PageName.TRACKS, () -> new TracksPage(this));
        strip = new Strip(makers.keySet(), this::turnTo);
        JPanel content = new JPanel(new BorderLayout());
        content.add(strip, BorderLayout.NORTH);
        content.add(leaves);
        below.setBorder(BorderFactory.createEmptyBorder(4, 28, 10, 28));
        below.add(work, BorderLayout.NORTH);
        below.add(told);
        content.add(below, BorderLayout.SOUTH);
        frame.setContentPane(content);
        frame.setDefaultCloseOperation(WindowConstants.DISPOSE_ON_CLOSE);
        place = new WindowPlace(frame, memory.session().window());
        frame.addWindowListener(new WindowAdapter() {
            /** Not before: it would take the time of the window itself. */
            @Override
            public void windowOpened(WindowEvent event) {
                WarmUp.begin();
            }

            @Override
            public void windowClosed(WindowEvent event) {
                work.breakOff();
                pages.values().forEach(Page::close);
                memory.note(place.last());
                closed.countDown();
            }
        });
        Thread.setDefaultUncaughtExceptionHandler(this::mistaken);
        keys();
        inHand.listen(this::changed);
        changed();
        look(palette);
        tell("");
        turnTo(PageName.DANCE);
    }

    /**
     * Opens the window, and waits until it is closed. On any thread but that of events.
     *
     * @param means what it works with
     */
    public static void open(Means means) throws InterruptedException {
        CountDownLatch closed = new CountDownLatch(1);
        Memory memory = new Memory(means.kept());
        SwingUtilities.invokeLater(() -> {
            try {
                Clothing.wear(palette(memory.session()));
                new Stand(means, memory, closed).frame.setVisible(true);
            } catch (RuntimeException | Error mistake) {
                closed.countDown();
                throw mistake;
            }
        });
        closed.await();
        memory.close();
    }

    private static Palette palette(Session session) {
        return session.isDark() ? Palette.DARK : Palette.LIGHT;
    }

    /** A mistake of the program's own is told as well as printed; the window goes on. */
    private void mistaken(Thread where, Throwable mistake) {
        mistake.printStackTrace();
        tell("Cuelead made a mistake of its own (" + mistake
                + "). What you have made is kept; if something looks wrong," + " close the window and open it again.");
    }

    private void keys() {
        for (PageName page : makers.keySet()) {
            key(KeyStroke.getKeyStroke(KeyEvent.VK_0 + page.number(), InputEvent.CTRL_DOWN_MASK), () -> turnTo(page));
        }
        key(KeyStroke.getKeyStroke(KeyEvent.VK_F11, 0), this::wholeScreenOrNot);
        key(
                KeyStroke.getKeyStroke(KeyEvent.VK_F8, 0),
                () -> wear(palette.equals(Palette.DARK) ? Palette.LIGHT : Palette.DARK));
    }

    private void key(KeyStroke stroke, Runnable does) {
        JComponent root = frame.getRootPane();
        root.getInputMap(JComponent.WHEN_IN_FOCUSED_WINDOW).put(stroke, stroke.toString());
        root.getActionMap().put(stroke.toString(), new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent event) {
                does.run();
            }
        });
    }

    private void changed() {
        memory.note(inHand.choices());
        if (inHand.isDance()) {
            inHand.sheet().ifPresent(sheet -> memory.note(new Recent(inHand.title(), sheet, inHand.song())));
        }
        frame.setTitle(inHand.title().isEmpty() ? NAME : NAME + ": " + inHand.title());
        strip.dance(inHand.title());
    }

    private void wear(Palette other) {
        palette = other;
        Clothing.wear(palette);
        look(palette);
        memory.noteLook(palette.equals(Palette.DARK), memory.session().isStill());
    }

    private void noteStill(boolean isStill) {
        memory.noteLook(memory.session().isDark(), isStill);
    }

    private void look(Palette other) {
        strip.look(other);
        pages.values().forEach(page -> page.look(other));
    }

    private void wholeScreenOrNot() {
        place.fillTheScreenOrNot();
        around();
        page(front).enter();
    }

    private void leaveFloor() {
        if (place.fillsTheScreen()) {
            wholeScreenOrNot();
        } else {
            floor().stop();
            turnTo(PageName.DANCE);
        }
    }

    private Page page(PageName name) {
        Page page = pages.get(name);
        if (page == null) {
            page = makers.get(name).get();
            pages.put(name, page);
            leaves.add(page.view(), name.name());
        }
        return page;
    }

    private FloorPage floor() {
        return (FloorPage) page(PageName.FLOOR);
    }

    /** What is around the pages is not shown where the floor has the whole screen. */
    private void around() {
        boolean isFloorAlone = place.fillsTheScreen() && front == PageName.FLOOR;
        strip.setVisible(!isFloorAlone);
        below.setVisible(!isFloorAlone);
        if (front == PageName.FLOOR) {
            floor().wholeScreen(isFloorAlone);
        }
    }

    @Override
    public Means means() {
        return means;
    }

    @Override
    public InHand inHand() {
        return inHand;
    }

    @Override
    public Palette palette() {
        return palette;
    }

    @Override
    public void tell(String sentence) {
        SwingUtilities.invokeLater(() -> {
            told.setText(sentence);
            told.setVisible(!sentence.isEmpty());
        });
    }

    @Override
    public <T> void work(String what, Job<T> job, Consumer<T> then) {
        work.begin(what, job, then);
    }

    @Override
    public void hushOthers(Page player) {
        pages.values().stream().filter(page -> page != player).forEach(Page::fallSilent);
    }

    @Override
    public void practise(Course course) {
        Optional<Path> sheet = inHand.sheet().filter(file -> inHand.isDance());
        if (sheet.isEmpty()) {
            tell("There is no dance yet: choose a step sheet first.");
            return;
        }
        Choices choices = inHand.choices();
        try {
            floor().practise(
                            choices.wish(sheet.get(), inHand.song(), course), choices.devices(means.devices()), course);
            turnTo(PageName.FLOOR);
        } catch (Refused refused) {
            tell(refused.getMessage());
        }
    }

    @Override
    public boolean has(PageName page) {
        return makers.containsKey(page);
    }

    @Override
    public void turnTo(PageName page) {
        if (page != front) {
            page(front).leave();
        }
        Page shown = page(page);
        front = page;
        strip.front(page);
        cards.show(leaves, page.name());
        around();
        shown.enter();
    }
}
