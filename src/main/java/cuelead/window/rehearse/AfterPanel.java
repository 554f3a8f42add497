package cuelead.window.rehearse;

import cuelead.rehearse.Advice;
import cuelead.rehearse.CallKind;
import cuelead.rehearse.Finding;
import cuelead.rehearse.Review;
import cuelead.rehearse.ReviewedCall;
import cuelead.steer.Told;
import cuelead.window.frame.Controls;
import cuelead.window.frame.Palette;
import cuelead.window.frame.Wrapping;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.GridLayout;
import java.awt.Insets;
import java.awt.event.ActionEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.InputMap;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;

/** How the calls of a take landed: the picture, what to work on, and the list, each call of which can be heard. */
final class AfterPanel extends JPanel {
    private static final long serialVersionUID = 1L;

    private static final int MOST_ADVICE = 3;
    private static final String HEAR = "hear";
    private static final int[] COLUMN_WIDTHS = {60, 50, 70, 150, 290};
    /** Columns that say nothing when they are cut. */
    private static final int NARROW_COLUMNS = 3;

    private static final double ROW_HEIGHTS = 1.9;

    private final PictureView picture = new PictureView();
    private final JTextArea toWorkOn = Controls.sentences("What to work on");
    private final CallsTable calls = new CallsTable();
    private final JTable table = new JTable(calls);
    private final JCheckBox onlyOff = new JCheckBox("Only what was not on time", true);
    private final JButton hear;

    /** What its buttons do. */
    interface Deeds {
        void hear(ReviewedCall call);

        void again();

        void back();
    }

    AfterPanel(Deeds deeds) {
        super(new BorderLayout(0, 8));
        hear = Controls.button("Hear this call: planned, then yours", 'H', () -> hear(deeds));
        onlyOff.setMnemonic('Y');
        onlyOff.addActionListener(pressed -> calls.choose(rows()));
        toWorkOn.setMargin(new Insets(6, 10, 6, 10));
        setUpTable(deeds);
        JPanel list = new JPanel(new BorderLayout(0, 6));
        list.add(onlyOff, BorderLayout.NORTH);
        list.add(new JScrollPane(table));
        JPanel below = new JPanel(new GridLayout(1, 2, 24, 0));
        below.add(list);
        below.add(right(deeds));
        below.setPreferredSize(new Dimension(600, 230));
        add(picture);
        add(below, BorderLayout.SOUTH);
        setBorder(BorderFactory.createEmptyBorder(8, 28, 8, 28));
    }

    private JPanel right(Deeds deeds) {
        JPanel buttons = new JPanel(new Wrapping(10));
        buttons.add(hear);
        buttons.add(Controls.button("Rehearse again", 'A', deeds::again));
        buttons.add(Controls.button("All takes", 'T', deeds::back));
        JPanel right = new JPanel(new BorderLayout(0, 8));
        right.add(new JScrollPane(toWorkOn));
        right.add(buttons, BorderLayout.SOUTH);
        return right;
    }

    private void setUpTable(Deeds deeds) {
        table.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        table.setRowHeight((int) Math.round(ROW_HEIGHTS * table.getFont().getSize2D()));
        table.getAccessibleContext().setAccessibleName("Calls");
        table.getSelectionModel().addListSelectionListener(event -> hear.setEnabled(table.getSelectedRow() >= 0));
        for (int i = 0; i < COLUMN_WIDTHS.length; i++) {
            table.getColumnModel().getColumn(i).setPreferredWidth(COLUMN_WIDTHS[i]);
            if (i < NARROW_COLUMNS) {
                table.getColumnModel().getColumn(i).setMinWidth(COLUMN_WIDTHS[i]);
            }
        }
        InputMap keys = table.getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT);
        keys.put(KeyStroke.getKeyStroke("F8"), "none"); // a table would take it for its head
        keys.put(KeyStroke.getKeyStroke("ENTER"), HEAR);
        table.getActionMap().put(HEAR, new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent pressed) {
                hear(deeds);
            }
        });
        table.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent event) {
                if (event.getClickCount() == 2) {
                    hear(deeds);
                }
            }
        });
    }

    private CallsTable.Rows rows() {
        return onlyOff.isSelected() ? CallsTable.Rows.NOT_ON_TIME : CallsTable.Rows.ALL;
    }

    private void hear(Deeds deeds) {
        if (table.getSelectedRow() >= 0) {
            deeds.hear(calls.call(table.getSelectedRow()));
        }
    }

    void show(Review review) {
        picture.show(review);
        toWorkOn.setText(words(review));
        toWorkOn.setCaretPosition(0);
        calls.show(review, rows());
        if (calls.getRowCount() > 0) {
            table.setRowSelectionInterval(0, 0);
        }
        hear.setEnabled(calls.getRowCount() > 0);
    }

    /** The whole in a sentence, and the three things to work on. */
    static String words(Review review) {
        StringBuilder words = new StringBuilder(review.count(CallKind.OK) + " of " + review.planned()
                + " calls were on time, " + review.count(CallKind.EARLY) + " early, " + review.count(CallKind.LATE)
                + " late, " + review.count(CallKind.MISSED) + " missed; "
                + Told.number(review.count(CallKind.WRONG), "other word")
                + ", and " + review.count(CallKind.EXTRA) + " said besides.\n");
        if (review.timed().isEmpty()) {
            return words + "\nNo planned word was heard: see whether the microphone is the right one.";
        }
        List<Finding> findings = Advice.on(review);
        words.append(findings.isEmpty() ? "\nNothing goes wrong twice in the same way. Well called." : "\nTo work on:");
        for (int i = 0; i < Math.min(MOST_ADVICE, findings.size()); i++) {
            words.append("\n")
                    .append(i + 1)
                    .append(".  ")
                    .append(findings.get(i).sentence());
        }
        return words.toString();
    }

    void focus() {
        table.requestFocusInWindow();
    }

    void look(Palette palette) {
        picture.look(palette);
    }
}
