package cuelead.window.start;

import cuelead.window.frame.Controls;
import cuelead.window.frame.Recent;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.GridLayout;
import java.awt.event.InputEvent;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.BorderFactory;
import javax.swing.DefaultListModel;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ListCellRenderer;
import javax.swing.ListSelectionModel;

/** The dances that lay on the stand lately, to be taken again. */
final class RecentDances {
    private static final int WIDTH = 270;

    private final Supplier<List<Recent>> lately;
    private final DefaultListModel<Recent> dances = new DefaultListModel<>();
    private final JList<Recent> list = new JList<>(dances);
    private final JPanel view = new JPanel(new BorderLayout(0, 8));

    /**
     * All that is known of.
     *
     * @param kept where the copies lie that have the user's changes
     * @param take is given the one that is chosen
     */
    RecentDances(Supplier<List<Recent>> lately, Path kept, Consumer<Recent> take) {
        this.lately = lately;
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setCellRenderer(new Cell(kept));
        list.setFixedCellWidth(1); // as wide as its place: what is longer is cut
        list.getAccessibleContext().setAccessibleName("Dances that lay on the stand lately");
        list.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent click) {
                int index = list.locationToIndex(click.getPoint());
                if (index >= 0 && list.getCellBounds(index, index).contains(click.getPoint())) {
                    take.accept(dances.get(index));
                }
            }
        });
        list.addKeyListener(new KeyAdapter() {
            @Override
            public void keyPressed(KeyEvent key) {
                boolean isTaken = key.getKeyCode() == KeyEvent.VK_ENTER || key.getKeyCode() == KeyEvent.VK_SPACE;
                if (isTaken
                        && list.getSelectedValue() != null
                        && (key.getModifiersEx() & InputEvent.CTRL_DOWN_MASK) == 0) {
                    take.accept(list.getSelectedValue());
                }
            }
        });
        JLabel title = Controls.title("Lately", 1.15);
        title.setDisplayedMnemonic('L');
        title.setLabelFor(list);
        JScrollPane scroll = new JScrollPane(list);
        scroll.setPreferredSize(new Dimension(WIDTH, 200));
        view.setBorder(BorderFactory.createEmptyBorder(14, 8, 10, 8));
        view.add(title, BorderLayout.NORTH);
        view.add(scroll);
        refresh();
    }

    JComponent view() {
        return view;
    }

    void refresh() {
        List<Recent> now = lately.get();
        if (!now.equals(Collections.list(dances.elements()))) {
            dances.clear();
            now.forEach(dances::addElement);
        }
        view.setVisible(!dances.isEmpty());
    }

    /** The music, or else the sheet; a sheet and its copy with changes have one title and one name. */
    static String below(Recent recent, Path kept) {
        String name = String.valueOf(recent.song().orElse(recent.sheet()).getFileName());
        return recent.sheet().startsWith(kept) ? name + ", sheet kept by Cuelead" : name;
    }

    /** A dance with its music below it. Two labels, since one with HTML takes a fifth of the program's start. */
    private static final class Cell extends JPanel implements ListCellRenderer<Recent> {
        private static final long serialVersionUID = 1L;

        private final JLabel title = Controls.title(" ", 1);
        private final JLabel music = new JLabel(" ");

        private final Path kept;

        Cell(Path kept) {
            super(new GridLayout(2, 1));
            this.kept = kept;
            setBorder(BorderFactory.createEmptyBorder(6, 8, 6, 8));
            add(title);
            add(music);
        }

        @Override
        public Component getListCellRendererComponent(
                JList<? extends Recent> all, Recent recent, int index, boolean isSelected, boolean hasFocus) {
            title.setText(recent.title());
            music.setText(below(recent, kept));
            getAccessibleContext().setAccessibleName(title.getText() + ", " + music.getText());
            setBackground(isSelected ? all.getSelectionBackground() : all.getBackground());
            title.setForeground(isSelected ? all.getSelectionForeground() : all.getForeground());
            music.setForeground(title.getForeground());
            return this;
        }
    }
}
