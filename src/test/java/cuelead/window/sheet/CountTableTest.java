package cuelead.window.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.sheet.StepPlace;
import cuelead.window.frame.Palette;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class CountTableTest {
    private static final int CALL = CountColumn.CALL.column();
    private static final Understood DANCE = Understood.of("""
            MOORING LINES
            Count: 8   Wall: 1

            [1-4] VINE RIGHT
            1-2 Step R to side, step L behind R
            3-4 Step R to side, touch L beside R  "side, -"
            [5-8] VINE LEFT
            1-2 Step L to side, step R behind L
            3-4 Step L to side, touch R beside L
            """);

    private final List<String> called = new ArrayList<>();
    private final List<Integer> chosen = new ArrayList<>();
    private CountTable table;

    @BeforeEach
    void show() {
        table = new CountTable(
                Palette.DARK, (StepPlace place, String words) -> called.add(place + " " + words), chosen::add);
        table.show(DANCE.lines());
    }

    private void write(String words) {
        assertTrue(table.editCellAt(table.getSelectedRow(), CALL));
        JTextField field = (JTextField) table.getEditorComponent();
        assertEquals(field.getText(), field.getSelectedText());
        field.setText(words);
    }

    private void enter() {
        Object key =
                table.getInputMap(CountTable.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).get(KeyStroke.getKeyStroke("ENTER"));
        table.getActionMap().get(key).actionPerformed(null);
    }

    @Test
    void aRowGoesToItsLineAndALineToItsRow() {
        table.changeSelection(1, 0, false, false);
        table.changeSelection(3, 0, false, false);
        assertEquals(List.of(5, 6), chosen);
        table.goTo(8);
        assertEquals(6, table.getSelectedRow());
        table.goTo(2);
        assertEquals(6, table.getSelectedRow());
        assertEquals(List.of(5, 6), chosen);
    }

    @Test
    void callsAreWrittenOneBelowTheOtherPastTheHeads() {
        table.changeSelection(4, 0, false, false);
        assertEquals(CountRows.SILENCE, table.getValueAt(4, CALL));
        write("tap");
        enter();
        assertEquals(6, table.getSelectedRow());
        write("out");
        enter();
        assertEquals(List.of(new StepPlace(0, 3) + " tap", new StepPlace(1, 0) + " out"), called);
    }

    @Test
    void onlyCallsCanBeWritten() {
        assertFalse(table.isCellEditable(1, CountColumn.ACTION.column()));
        assertFalse(table.isCellEditable(0, CALL));
        assertTrue(table.isCellEditable(1, CALL));
    }

    @Test
    void whatComesMeanwhileWaitsForTheWriting() {
        table.changeSelection(1, 0, false, false);
        write("away");
        table.show(Understood.NOTHING.lines());
        assertTrue(table.isEditing());
        table.getCellEditor().cancelCellEditing();
        assertEquals(0, table.getRowCount());
        assertEquals(List.of(), called);
    }
}
