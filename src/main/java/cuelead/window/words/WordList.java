package cuelead.window.words;

import cuelead.window.words.WordsScene.Word;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.event.ActionEvent;
import java.awt.event.KeyEvent;
import java.util.Collections;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.DefaultListModel;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.KeyStroke;
import javax.swing.ListCellRenderer;
import javax.swing.ListSelectionModel;

/** The words of a dance, each with who says it. Used on the thread of events. */
final class WordList {
    private static final int WIDTH = 250;

    private final DefaultListModel<Word> words = new DefaultListModel<>();
    private final JList<Word> list = new JList<>(words);
    private final JScrollPane view = new JScrollPane(list);
    private boolean isShowing;

    /**
     * With no words.
     *
     * @param take   is given the word that is chosen
     * @param record is called by the space bar
     * @param keep   is called by Enter
     */
    WordList(Consumer<String> take, Runnable record, Runnable keep) {
        key(KeyEvent.VK_SPACE, record);
        key(KeyEvent.VK_ENTER, keep);
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setCellRenderer(new Cell());
        list.getAccessibleContext().setAccessibleName("The words of the dance");
        list.addListSelectionListener(selected -> {
            if (!isShowing && list.getSelectedValue() != null) {
                take.accept(list.getSelectedValue().text());
            }
        });
        view.setPreferredSize(new Dimension(WIDTH, 200));
    }

    private void key(int code, Runnable does) {
        KeyStroke stroke = KeyStroke.getKeyStroke(code, 0);
        list.getInputMap().put(stroke, stroke.toString());
        list.getActionMap().put(stroke.toString(), new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent pressed) {
                does.run();
            }
        });
    }

    void takeFocus() {
        list.requestFocusInWindow();
    }

    JComponent view() {
        return view;
    }

    void show(List<Word> shown, int at) {
        isShowing = true;
        if (!shown.equals(Collections.list(words.elements()))) {
            if (shown.size() == words.size()) {
                for (int i = 0; i < shown.size(); i++) {
                    words.set(i, shown.get(i));
                }
            } else {
                words.clear();
                words.addAll(shown);
            }
        }
        if (list.getSelectedIndex() != at) {
            list.setSelectedIndex(at);
            list.ensureIndexIsVisible(at);
        }
        isShowing = false;
    }

    void clear() {
        isShowing = true;
        words.clear();
        isShowing = false;
    }

    /** A word, and at the right who says it. */
    private static final class Cell extends JPanel implements ListCellRenderer<Word> {
        private static final long serialVersionUID = 1L;

        private final JLabel word = new JLabel();
        private final JLabel who = new JLabel();

        Cell() {
            super(new BorderLayout(8, 0));
            setBorder(BorderFactory.createEmptyBorder(5, 10, 5, 10));
            add(word);
            add(who, BorderLayout.EAST);
        }

        @Override
        public Component getListCellRendererComponent(
                JList<? extends Word> all, Word value, int index, boolean isSelected, boolean hasFocus) {
            word.setText(value.text());
            who.setText(value.isRecorded() ? "recorded" : "computer");
            word.setFont(all.getFont().deriveFont(value.isRecorded() ? Font.BOLD : Font.PLAIN));
            setBackground(isSelected ? all.getSelectionBackground() : all.getBackground());
            word.setForeground(isSelected ? all.getSelectionForeground() : all.getForeground());
            who.setForeground(word.getForeground());
            getAccessibleContext().setAccessibleName(value.text() + ", " + who.getText());
            return this;
        }
    }
}
