package cuelead.window.rehearse;

import cuelead.rehearse.CallKind;
import cuelead.rehearse.HeardWord;
import cuelead.rehearse.PlannedCall;
import cuelead.rehearse.Review;
import cuelead.rehearse.ReviewedCall;
import cuelead.steer.Told;
import cuelead.studio.Landed;
import java.util.List;
import javax.swing.table.AbstractTableModel;

/** The calls of a review, a row each: all of them, or those that were not on time. */
final class CallsTable extends AbstractTableModel {
    private static final long serialVersionUID = 1L;

    private static final List<String> COLUMNS = List.of("At", "Wall", "Section", "Call", "How it landed");

    private transient List<ReviewedCall> all = List.of();
    private transient List<ReviewedCall> shown = List.of();

    /** Which calls have a row. */
    enum Rows {
        ALL,
        NOT_ON_TIME
    }

    void show(Review review, Rows rows) {
        all = review.calls();
        choose(rows);
    }

    void choose(Rows rows) {
        shown = all.stream()
                .filter(call -> rows == Rows.ALL || call.kind() != CallKind.OK)
                .toList();
        fireTableDataChanged();
    }

    ReviewedCall call(int row) {
        return shown.get(row);
    }

    @Override
    public int getRowCount() {
        return shown.size();
    }

    @Override
    public int getColumnCount() {
        return COLUMNS.size();
    }

    @Override
    public String getColumnName(int column) {
        return COLUMNS.get(column);
    }

    @Override
    public Object getValueAt(int row, int column) {
        ReviewedCall call = shown.get(row);
        return switch (column) {
            case 0 -> Told.minutes(call.seconds());
            case 1 ->
                call.planned()
                        .map(PlannedCall::wall)
                        .filter(wall -> wall > 0)
                        .map(Object::toString)
                        .orElse("");
            case 2 -> call.planned().map(PlannedCall::section).orElse("");
            case 3 ->
                call.planned()
                        .map(PlannedCall::word)
                        .orElseGet(() -> call.heard().map(HeardWord::word).orElse(""));
            default -> Landed.of(call);
        };
    }
}
