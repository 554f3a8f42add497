package cuelead.window.sheet;

import cuelead.listing.ListedLine;
import cuelead.sheet.StepPlace;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import javax.swing.table.AbstractTableModel;

/** The counts of a dance as rows; the call of each can be changed. */
final class CountRows extends AbstractTableModel {
    private static final long serialVersionUID = 1L;

    /** Stands for silence where a call is written and read. */
    static final String SILENCE = "-";

    private transient List<ListedLine> lines = List.of();
    private final transient BiConsumer<StepPlace, String> call;

    /** @param call is given what a step is to be called with; nothing = what the trade says */
    CountRows(BiConsumer<StepPlace, String> call) {
        this.call = call;
    }

    void show(List<ListedLine> others) {
        lines = others;
        fireTableDataChanged();
    }

    ListedLine line(int row) {
        return lines.get(row);
    }

    Optional<ListedLine.Counted> counted(int row) {
        return lines.get(row) instanceof ListedLine.Counted counted ? Optional.of(counted) : Optional.empty();
    }

    /** The first row that is written on a line of the sheet, from 1; below 0 where there is none. */
    int rowOf(int sheetLine) {
        for (int row = 0; row < lines.size(); row++) {
            if (lines.get(row).line() == sheetLine) {
                return row;
            }
        }
        return -1;
    }

    @Override
    public int getRowCount() {
        return lines.size();
    }

    @Override
    public int getColumnCount() {
        return CountColumn.values().length;
    }

    @Override
    public String getColumnName(int column) {
        return CountColumn.at(column).head();
    }

    @Override
    public String getValueAt(int row, int column) {
        if (lines.get(row) instanceof ListedLine.Head head) {
            return head.words();
        }
        String cell = CountColumn.at(column).of(counted(row).orElseThrow());
        return CountColumn.at(column) == CountColumn.CALL && cell.isEmpty() ? SILENCE : cell;
    }

    @Override
    public boolean isCellEditable(int row, int column) {
        return CountColumn.at(column) == CountColumn.CALL
                && counted(row).flatMap(ListedLine.Counted::place).isPresent();
    }

    @Override
    public void setValueAt(Object value, int row, int column) {
        if (!value.equals(getValueAt(row, column))) {
            counted(row).flatMap(ListedLine.Counted::place).ifPresent(place -> call.accept(place, value.toString()));
        }
    }
}
