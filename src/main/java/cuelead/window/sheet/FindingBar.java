package cuelead.window.sheet;

import cuelead.window.frame.Controls;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.Insets;
import java.util.List;
import java.util.function.IntConsumer;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;

/** What was found in a sheet, one after the other, in words. */
final class FindingBar extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final int LINES = 3;

    private final JLabel which = Controls.title(" ", 1);
    private final JTextArea words = Controls.sentences("What was found here");
    private final JButton back;
    private final JButton on;
    private final transient IntConsumer chosen;
    private transient List<Finding> findings = List.of();
    private int at = -1;

    /** @param chosen is given the line, from 1, of a finding that is stepped to */
    FindingBar(IntConsumer chosen) {
        super(new BorderLayout(12, 4));
        this.chosen = chosen;
        back = Controls.button("Finding back", 'I', () -> step(-1));
        on = Controls.button("Finding on", 'N', () -> step(1));
        on.setToolTipText("F3; back with Shift and F3");
        JScrollPane scroll = new JScrollPane(words);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        words.setMargin(new Insets(0, 0, 0, 0));
        int height = LINES * words.getFontMetrics(words.getFont()).getHeight();
        scroll.setPreferredSize(new Dimension(200, height + 4));
        JPanel said = new JPanel(new BorderLayout(0, 2));
        said.add(which, BorderLayout.NORTH);
        said.add(scroll);
        add(said);
        JPanel buttons = new JPanel(new BorderLayout());
        buttons.add(Controls.line(back, on), BorderLayout.NORTH);
        add(buttons, BorderLayout.EAST);
        setBorder(BorderFactory.createEmptyBorder(6, 16, 0, 0));
    }

    /** Other findings; where there is none, that is said. */
    void show(List<Finding> others, boolean isDance) {
        Finding before = at >= 0 && at < findings.size() ? findings.get(at) : null;
        findings = others;
        at = before == null ? -1 : others.indexOf(before);
        if (findings.isEmpty()) {
            which.setText(isDance ? "Nothing was found to be wrong." : " ");
            words.setText("");
        } else if (at < 0) {
            at = 0;
        }
        tell();
    }

    /** The next one, or the one before; behind the last comes the first. */
    void step(int by) {
        if (!findings.isEmpty()) {
            at = Math.floorMod(at + by, findings.size());
            tell();
            chosen.accept(findings.get(at).shownLine());
        }
    }

    /** Shows what was found on a line, from 1, if anything was. */
    void goTo(int line) {
        boolean isThere = at >= 0 && findings.get(at).shownLine() == line;
        for (int i = 0; i < findings.size() && !isThere; i++) {
            if (findings.get(i).shownLine() == line) {
                at = i;
                tell();
                return;
            }
        }
    }

    private void tell() {
        back.setEnabled(findings.size() > 1);
        on.setEnabled(!findings.isEmpty());
        if (findings.isEmpty()) {
            return;
        }
        Finding now = findings.get(at);
        String word = now.severity().word();
        which.setText((at + 1) + " of " + findings.size() + ": " + word
                + (now.line() > 0 ? " at line " + now.line() : " about the whole sheet"));
        words.setText(now.words());
        words.setCaretPosition(0);
    }
}
