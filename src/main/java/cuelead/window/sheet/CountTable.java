package cuelead.window.sheet;

import cuelead.listing.ListedLine;
import cuelead.sheet.StepPlace;
import cuelead.window.frame.Palette;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.event.ActionEvent;
import java.util.EventObject;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import java.util.function.IntConsumer;
import javax.swing.AbstractAction;
import javax.swing.Action;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.SwingConstants;
import javax.swing.event.ChangeEvent;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.TableCellRenderer;
import javax.swing.table.TableColumn;
import javax.swing.text.JTextComponent;

/** What was understood of a sheet, count by count. */
final class CountTable extends JTable {
    private static final long serialVersionUID = 1L;
    private static final int BESIDE = 5;
    private static final int BETWEEN_ROWS = 8;
    /** On a finer screen the same letters are a little wider. */
    private static final int SPARE = 6;

    private static final String NEXT_CALL = "next call";
    private static final KeyStroke ENTER = KeyStroke.getKeyStroke("ENTER");

    private final CountRows rows;
    private transient Palette palette;
    private final transient Action nextCall = new AbstractAction() {
        private static final long serialVersionUID = 1L;

        @Override
        public void actionPerformed(ActionEvent event) {
            nextCall();
        }
    };
    private boolean isShowing;
    /** What came while a call was being written. */
    private transient List<ListedLine> waiting;

    /**
     * Without a dance.
     *
     * @param call   as in {@link CountRows}
     * @param chosen is given the line of the sheet, from 1, of a row that the user goes to
     */
    CountTable(Palette palette, BiConsumer<StepPlace, String> call, IntConsumer chosen) {
        super(new CountRows(call));
        rows = (CountRows) getModel();
        this.palette = palette;
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        setFillsViewportHeight(true);
        setShowGrid(false);
        setIntercellSpacing(new Dimension(0, 0));
        setSurrendersFocusOnKeystroke(true);
        putClientProperty("terminateEditOnFocusLost", true);
        getTableHeader().setReorderingAllowed(false);
        TableCellRenderer heads = getTableHeader().getDefaultRenderer();
        getTableHeader().setDefaultRenderer((all, head, isSelected, hasFocus, row, column) -> {
            JLabel label = (JLabel) heads.getTableCellRendererComponent(all, head, isSelected, hasFocus, row, column);
            label.setHorizontalAlignment(SwingConstants.LEADING);
            label.setBorder(BorderFactory.createEmptyBorder(4, BESIDE, 4, 0));
            return label;
        });
        getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke("F8"), "none");
        setDefaultRenderer(Object.class, new Cell());
        getAccessibleContext().setAccessibleName("What was understood, count by count");
        getSelectionModel().addListSelectionListener(event -> {
            if (!isShowing && getSelectedRow() >= 0) {
                chosen.accept(rows.line(getSelectedRow()).line());
            }
        });
        getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(ENTER, NEXT_CALL);
        getActionMap().put(NEXT_CALL, nextCall);
        fit();
    }

    /** What is written is taken, and the next call can be written. */
    private void nextCall() {
        if (isEditing() && !getCellEditor().stopCellEditing()) {
            return;
        }
        for (int row = getSelectedRow() + 1; row < getRowCount(); row++) {
            if (isCellEditable(row, CountColumn.CALL.column())) {
                changeSelection(row, 0, false, false);
                return;
            }
        }
    }

    /** What is typed stands in the place of what was there. */
    @Override
    public boolean editCellAt(int row, int column, EventObject event) {
        boolean isBegun = super.editCellAt(row, column, event);
        if (isBegun && getEditorComponent() instanceof JTextComponent words) {
            words.getAccessibleContext().setAccessibleName("The call");
            words.selectAll();
            words.getInputMap().put(ENTER, NEXT_CALL);
            words.getActionMap().put(NEXT_CALL, nextCall);
        }
        return isBegun;
    }

    void look(Palette other) {
        palette = other;
        fit();
        repaint();
    }

    private void fit() {
        FontMetrics letters = getFontMetrics(getFont());
        setRowHeight(letters.getHeight() + BETWEEN_ROWS);
        for (int column = 0; column < getColumnCount(); column++) {
            CountColumn shown = CountColumn.at(column);
            int words = Math.max(letters.stringWidth(shown.widest()), letters.stringWidth(shown.head()));
            int width = words + 2 * BESIDE + SPARE;
            TableColumn place = getColumnModel().getColumn(column);
            place.setPreferredWidth(width);
            place.setMinWidth(shown.isWide() ? width / 2 : width);
            place.setMaxWidth(shown.isWide() ? Integer.MAX_VALUE : width * 5 / 4);
        }
    }

    /** Shows the counts of a dance; where a call is being written, when that is done. */
    void show(List<ListedLine> lines) {
        if (isEditing()) {
            waiting = lines;
            return;
        }
        waiting = null;
        int row = getSelectedRow();
        isShowing = true;
        rows.show(lines);
        if (row >= 0 && row < lines.size()) {
            changeSelection(row, 0, false, false);
        }
        isShowing = false;
    }

    /** Whatever is pressed of a row: its call is what can be written there. */
    @Override
    public void changeSelection(int row, int column, boolean toggle, boolean extend) {
        super.changeSelection(row, CountColumn.CALL.column(), false, false);
    }

    /** Has the keys; where no row is chosen, the first one is. */
    void begin() {
        requestFocusInWindow();
        if (getSelectedRow() < 0 && rows.getRowCount() > 0) {
            changeSelection(0, 0, false, false);
        }
    }

    @Override
    public void editingStopped(ChangeEvent event) {
        super.editingStopped(event);
        showWhatWaited();
    }

    @Override
    public void editingCanceled(ChangeEvent event) {
        super.editingCanceled(event);
        showWhatWaited();
    }

    private void showWhatWaited() {
        if (waiting != null) {
            show(waiting);
        }
    }

    /** Goes to the first count that is written on a line of the sheet, from 1, where there is one. */
    void goTo(int line) {
        int row = rows.rowOf(line);
        boolean isThere = getSelectedRow() >= 0 && rows.line(getSelectedRow()).line() == line;
        if (row >= 0 && !isThere && !isEditing()) {
            isShowing = true;
            changeSelection(row, 0, false, false);
            isShowing = false;
        }
    }

    /** The head of a section goes through all columns; a call of the sheet's own is bold. */
    private final class Cell extends DefaultTableCellRenderer {
        private static final long serialVersionUID = 1L;

        private String head = "";
        private int shift;

        @Override
        public Component getTableCellRendererComponent(
                JTable table, Object value, boolean isSelected, boolean hasFocus, int row, int column) {
            ListedLine line = rows.line(row);
            boolean isHead = line instanceof ListedLine.Head;
            super.getTableCellRendererComponent(table, isHead ? "" : value, isSelected, hasFocus, row, column);
            head = isHead ? value.toString() : "";
            shift = table.getCellRect(row, column, false).x;
            boolean isCall = CountColumn.at(column) == CountColumn.CALL;
            boolean isOwnCall = isCall && line instanceof ListedLine.Counted counted && counted.isOwn();
            setFont(getFont().deriveFont(isHead || isOwnCall ? Font.BOLD : Font.PLAIN));
            setBorder(BorderFactory.createEmptyBorder(0, BESIDE, 0, BESIDE));
            setBackground(isSelected ? palette.field() : palette.ground());
            setForeground(isHead || isCall ? palette.now() : palette.ink());
            if (hasFocus && !isHead) {
                setBorder(BorderFactory.createCompoundBorder(
                        BorderFactory.createLineBorder(palette.now(), 2),
                        BorderFactory.createEmptyBorder(0, BESIDE - 2, 0, BESIDE - 2)));
            }
            setToolTipText(isHead ? head : figure(line));
            return this;
        }

        private String figure(ListedLine line) {
            return line instanceof ListedLine.Counted counted
                            && !counted.figure().isEmpty()
                    ? counted.figure()
                    : null;
        }

        @Override
        protected void paintComponent(Graphics on) {
            super.paintComponent(on);
            if (!head.isEmpty()) {
                ((Graphics2D) on).addRenderingHints(letters());
                on.setFont(getFont());
                on.setColor(getForeground());
                FontMetrics letters = on.getFontMetrics();
                int base = (getHeight() - letters.getHeight()) / 2 + letters.getAscent();
                on.drawString(head, BESIDE - shift, base);
            }
        }

        private Map<?, ?> letters() {
            return getToolkit().getDesktopProperty("awt.font.desktophints") instanceof Map<?, ?> hints
                    ? hints
                    : Map.of(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        }
    }
}
