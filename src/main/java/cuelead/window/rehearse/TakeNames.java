package cuelead.window.rehearse;

import java.awt.Component;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.Locale;
import javax.swing.BorderFactory;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JComponent;
import javax.swing.JList;

/** Takes by their day and number: {@code 27 November 2026, take 2}. */
final class TakeNames extends DefaultListCellRenderer {
    private static final long serialVersionUID = 1L;

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);
    private static final int DAY_LETTERS = "2026-11-27".length();

    @Override
    public Component getListCellRendererComponent(
            JList<?> list, Object value, int index, boolean isSelected, boolean cellHasFocus) {
        Component cell = super.getListCellRendererComponent(list, told((Path) value), index, isSelected, cellHasFocus);
        ((JComponent) cell).setBorder(BorderFactory.createEmptyBorder(6, 10, 6, 10));
        return cell;
    }

    static String told(Path take) {
        String name = take.getFileName().toString();
        try {
            LocalDate day = LocalDate.parse(name.substring(0, DAY_LETTERS));
            String number = name.substring(DAY_LETTERS + 1, name.lastIndexOf('.'));
            return DAY.format(day) + ", take " + number;
        } catch (DateTimeParseException | StringIndexOutOfBoundsException otherwiseNamed) {
            return name;
        }
    }
}
