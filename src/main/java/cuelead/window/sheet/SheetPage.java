package cuelead.window.sheet;

import cuelead.window.frame.Controls;
import cuelead.window.frame.Drop;
import cuelead.window.frame.FileChoice;
import cuelead.window.frame.Host;
import cuelead.window.frame.Page;
import cuelead.window.frame.Palette;
import cuelead.window.frame.Wrapping;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.event.ActionEvent;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import javax.swing.Timer;

/** A sheet's text, and beside it what was understood of it. Used on the thread of events. */
public final class SheetPage implements Page, Drop.Taker, SheetDesk.Shown {
    /** As long as a hand rests between two words. */
    private static final int PAUSE_MS = 250;

    private final Host host;
    private final ExecutorService reader = Executors.newSingleThreadExecutor(task -> {
        Thread thread = new Thread(task, "cuelead-sheet");
        thread.setDaemon(true);
        return thread;
    });
    private final JPanel page = new JPanel(new BorderLayout(0, 6));
    private final JLabel facts = Controls.title(" ", 1.15);
    private final SheetDesk desk;
    private final SheetText text;
    private final Margin margin;
    private final CountTable counts;
    private final FindingBar findings;
    private final JButton undo;
    private final JButton redo;
    private final PaperButtons paper;
    private final Timer pause;

    /** Without a sheet. */
    public SheetPage(Host host) {
        this.host = host;
        Executor events = SwingUtilities::invokeLater;
        desk = new SheetDesk(host, reader, events, this);
        pause = new Timer(PAUSE_MS, passed -> paused());
        pause.setRepeats(false);
        text = new SheetText(host.palette(), this::typed);
        margin = new Margin(text, host.palette(), this::goTo);
        counts = new CountTable(host.palette(), desk::call, this::chosen);
        findings = new FindingBar(this::goTo);
        paper = new PaperButtons(host, desk::understood);
        paper.enable(false);
        undo = Controls.button("Undo", 'U', () -> rested(desk::undo));
        redo = Controls.button("Redo", 'R', () -> rested(desk::redo));
        undo.setToolTipText("Control and Z");
        redo.setToolTipText("Control and Y");
        Drop drop = new Drop(this);
        text.addCaretListener(moved -> atLine(text.line()));
        text.setTransferHandler(new TextDrop(text.getTransferHandler(), drop));
        page.setTransferHandler(drop);
        counts.setTransferHandler(drop);
        JPanel buttons = new JPanel(new Wrapping(10));
        buttons.add(Controls.button("Choose a step sheet\u2026", 'S', this::choose));
        buttons.add(Controls.button(
                "Paste a step sheet",
                'V',
                () -> drop.take(page.getToolkit().getSystemClipboard().getContents(this))));
        buttons.add(undo);
        buttons.add(redo);
        buttons.add(paper.view());
        JPanel head = new JPanel(new BorderLayout(0, 6));
        head.add(facts, BorderLayout.NORTH);
        head.add(buttons);
        head.setBorder(BorderFactory.createEmptyBorder(0, 16, 0, 16));
        page.add(head, BorderLayout.NORTH);
        page.add(sides());
        page.add(findings, BorderLayout.SOUTH);
        page.setBorder(BorderFactory.createEmptyBorder(4, 12, 0, 12));
        keys();
        understood(desk.understood());
    }

    private JComponent sides() {
        JScrollPane left = new JScrollPane(text);
        left.setRowHeaderView(margin);
        JScrollPane right = new JScrollPane(counts);
        left.setPreferredSize(new Dimension(590, 300));
        right.setPreferredSize(new Dimension(540, 300));
        JSplitPane sides = new JSplitPane(JSplitPane.HORIZONTAL_SPLIT, left, right);
        sides.setResizeWeight(0.5);
        for (String key : List.of("F6", "F8")) {
            sides.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke(key), "none");
        }
        sides.setBorder(BorderFactory.createEmptyBorder());
        return sides;
    }

    private void keys() {
        key("control Z", () -> rested(desk::undo));
        key("control Y", () -> rested(desk::redo));
        key("control shift Z", () -> rested(desk::redo));
        key("control P", paper::print);
        key("F3", () -> findings.step(1));
        key("shift F3", () -> findings.step(-1));
        key("F6", this::otherSide);
    }

    private void otherSide() {
        if (text.isFocusOwner()) {
            counts.begin();
        } else {
            text.requestFocusInWindow();
        }
    }

    private void key(String stroke, Runnable does) {
        page.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke(stroke), stroke);
        page.getActionMap().put(stroke, new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent event) {
                does.run();
            }
        });
    }

    private void choose() {
        FileChoice.sheet(page, host).ifPresent(this::sheet);
    }

    private void typed(String now) {
        desk.typed(now);
        pause.restart();
        undoable();
    }

    private void paused() {
        desk.pause();
        undoable();
    }

    private void rested(Runnable does) {
        pause.stop();
        does.run();
        undoable();
    }

    private void undoable() {
        undo.setEnabled(desk.versions().canUndo());
        redo.setEnabled(desk.versions().canRedo());
    }

    /** A row of the counts was gone to. */
    private void chosen(int line) {
        if (line > 0) {
            text.goTo(line);
            findings.goTo(line);
            margin.repaint();
        }
    }

    private void goTo(int line) {
        text.goTo(line);
        atLine(line);
    }

    private void atLine(int line) {
        text.mark(line);
        margin.repaint();
        counts.goTo(line);
        findings.goTo(line);
    }

    @Override
    public JComponent view() {
        return page;
    }

    @Override
    public void enter() {
        desk.enter();
        text.requestFocusInWindow();
    }

    @Override
    public void leave() {
        pause.stop();
        desk.leave();
    }

    @Override
    public void close() {
        leave();
        reader.shutdown();
    }

    @Override
    public void look(Palette palette) {
        text.look(palette);
        margin.look(palette);
        counts.look(palette);
    }

    @Override
    public void opening() {
        text.begin("");
        text.setEditable(false);
        facts.setText("Reading\u2026");
        undoable();
    }

    @Override
    public void begin(String now) {
        text.begin(now);
        text.setEditable(true);
        undoable();
    }

    @Override
    public void put(String now) {
        text.put(now);
        undoable();
    }

    @Override
    public void understood(Understood now) {
        counts.show(now.lines());
        margin.show(now.findings());
        findings.show(now.findings(), now.dance().isPresent());
        facts.setText(now.facts());
        paper.enable(now.dance().isPresent());
        undoable();
    }

    @Override
    public void sheet(Path file) {
        rested(() -> desk.take(file));
    }

    @Override
    public void song(Path file) {
        host.inHand().takeSong(file);
        host.tell("The music is " + file.getFileName() + " from now on.");
    }

    @Override
    public void text(String pasted) {
        rested(() -> desk.take(pasted));
    }

    @Override
    public void told(String sentence) {
        host.tell(sentence);
    }
}
