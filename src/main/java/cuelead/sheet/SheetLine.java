package cuelead.sheet;

import java.util.ArrayList;
import java.util.List;

/**
 * A line of the sheet.
 *
 * @param number 1-based
 * @param text   without its line end
 */
record SheetLine(int number, String text) {
    static List<SheetLine> of(String sheet) {
        List<SheetLine> lines = new ArrayList<>();
        String[] texts = sheet.replace("\r\n", "\n").replace('\r', '\n').split("\n", -1);
        for (int i = 0; i < texts.length; i++) {
            lines.add(new SheetLine(i + 1, texts[i]));
        }
        return lines;
    }

    boolean isBlank() {
        return firstColumn() > text.length();
    }

    /** 1-based column of the first character that is no space. */
    int firstColumn() {
        int index = 0;
        while (index < text.length() && Scanner.isSpace(text.charAt(index))) {
            index++;
        }
        return index + 1;
    }

    List<Token> tokens() {
        return Scanner.tokens(text);
    }
}
