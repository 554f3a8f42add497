package cuelead.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A line of the sheet.
 *
 * @param number 1-based
 * @param text   without its line end
 * @param told   what it is known to be, whatever its words say
 * @param lead   how many of its first characters stand elsewhere in the sheet
 */
record SheetLine(int number, String text, Optional<LineKind> told, int lead) {
    /** A line whose words tell what it is. */
    SheetLine(int number, String text) {
        this(number, text, Optional.empty(), 0);
    }

    /** The same line with words from elsewhere before it. */
    SheetLine behind(String words) {
        return new SheetLine(number, words + text, told, words.length());
    }

    static List<SheetLine> of(String sheet) {
        List<SheetLine> lines = new ArrayList<>();
        String[] texts = sheet.replace("\r\n", "\n").replace('\r', '\n').split("\n", -1);
        for (int i = 0; i < texts.length; i++) {
            lines.add(new SheetLine(i + 1, Characters.plain(texts[i])));
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
