package cuelead.window.sheet;

import cuelead.window.frame.Palette;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Insets;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.geom.Rectangle2D;
import java.util.function.Consumer;
import javax.swing.JTextArea;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import javax.swing.text.AbstractDocument;
import javax.swing.text.BadLocationException;

/** The text of a sheet, to be written in. One of its lines is marked. */
final class SheetText extends JTextArea {
    private static final long serialVersionUID = 1L;

    private transient Palette palette;
    private boolean isPutting;
    private int marked;

    /** @param typed is given the text after each change that the user makes */
    SheetText(Palette palette, Consumer<String> typed) {
        this.palette = palette;
        setFont(new Font(Font.MONOSPACED, Font.PLAIN, getFont().getSize() + 1));
        setLineWrap(true);
        setWrapStyleWord(true);
        setOpaque(false);
        setMargin(new Insets(6, 8, 6, 8));
        setFocusTraversalKeys(java.awt.KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
        setFocusTraversalKeys(java.awt.KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
        getAccessibleContext().setAccessibleName("The sheet's text");
        getDocument().addDocumentListener(new DocumentListener() {
            @Override
            public void insertUpdate(DocumentEvent event) {
                changed();
            }

            @Override
            public void removeUpdate(DocumentEvent event) {
                changed();
            }

            @Override
            public void changedUpdate(DocumentEvent event) {}

            private void changed() {
                if (!isPutting) {
                    typed.accept(getText());
                }
            }
        });
    }

    void look(Palette other) {
        palette = other;
        repaint();
    }

    /** Puts another text in the place of this one; what both have in common stays where it is. */
    void put(String text) {
        String now = getText();
        int shorter = Math.min(now.length(), text.length());
        int from = 0;
        while (from < shorter && now.charAt(from) == text.charAt(from)) {
            from++;
        }
        int behind = 0;
        while (behind < shorter - from
                && now.charAt(now.length() - 1 - behind) == text.charAt(text.length() - 1 - behind)) {
            behind++;
        }
        isPutting = true;
        try {
            ((AbstractDocument) getDocument())
                    .replace(from, now.length() - behind - from, text.substring(from, text.length() - behind), null);
        } catch (BadLocationException impossible) {
            throw new IllegalStateException(impossible);
        } finally {
            isPutting = false;
        }
    }

    /** Puts a text there that has nothing to do with this one, and shows its beginning. */
    void begin(String text) {
        put(text);
        setCaretPosition(0);
    }

    /** The line with the caret, from 1. */
    int line() {
        return lineOf(getCaretPosition());
    }

    /** The line at a height, from 1. */
    int lineAt(int y) {
        return lineOf(viewToModel2D(new Point(0, y)));
    }

    private int lineOf(int offset) {
        try {
            return getLineOfOffset(offset) + 1;
        } catch (BadLocationException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    int marked() {
        return marked;
    }

    /** Marks a line, from 1; none with 0. */
    void mark(int line) {
        if (line != marked) {
            marked = line;
            repaint();
        }
    }

    /** Marks a line, and brings it into view with the caret at its beginning. */
    void goTo(int line) {
        if (line < 1 || line > getLineCount()) {
            return;
        }
        mark(line);
        try {
            setCaretPosition(getLineStartOffset(line - 1));
        } catch (BadLocationException impossible) {
            throw new IllegalStateException(impossible);
        }
        Rectangle place = placeOf(line);
        place.grow(0, place.height);
        scrollRectToVisible(place);
    }

    /** Where a line stands, from 1, with all rows that it is wrapped into; empty where there is none. */
    Rectangle placeOf(int line) {
        if (line < 1 || line > getLineCount()) {
            return new Rectangle();
        }
        try {
            int end = getLineEndOffset(line - 1);
            boolean endsText = line == getLineCount();
            Rectangle2D first = modelToView2D(getLineStartOffset(line - 1));
            Rectangle2D last = modelToView2D(endsText ? end : Math.max(0, end - 1));
            if (first == null || last == null) {
                return new Rectangle();
            }
            return new Rectangle(
                    0, (int) Math.round(first.getY()), getWidth(), (int) Math.round(last.getMaxY() - first.getY()));
        } catch (BadLocationException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    @Override
    protected void paintComponent(Graphics on) {
        on.setColor(palette.ground());
        on.fillRect(0, 0, getWidth(), getHeight());
        Rectangle band = placeOf(marked);
        on.setColor(palette.field());
        on.fillRect(band.x, band.y, band.width, band.height);
        super.paintComponent(on);
    }
}
