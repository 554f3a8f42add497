package cuelead.sheet;

/**
 * The many characters of pasted text as the few that the grammar knows: every kind of space is a space, every dash a
 * hyphen, a bullet at the head of a line is nothing, and so is a picture. A text keeps its length, so that columns stay
 * what they are.
 */
final class Characters {
    private static final String DASHES = "\u2010\u2011\u2012\u2013\u2014\u2015\u2212\ufe58\uff0d";
    private static final String BULLETS =
            "\u2022\u2023\u25cf\u25aa\u25a0\u25e6\u00b7\u2043\u25cb\u2219\u27a2\u2713\uf0b7\u25ba\u25b6\u00bb\u00ab\u203a\u2192";

    private static final int SHORTEST_LEADER = 2;

    private Characters() {}

    static String plain(String line) {
        StringBuilder plain = new StringBuilder(line.length());
        for (int i = 0; i < line.length(); i++) {
            plain.append(plain(line.charAt(i)));
        }
        withoutArrows(plain);
        Emphasis.leave(plain);
        withoutLeaders(plain);
        withoutRules(plain);
        return withoutBullet(plain);
    }

    private static char plain(char c) {
        if (c == '\t') {
            return c;
        }
        if (Scanner.isSpace(c) || Character.isSpaceChar(c) || isUnseen(c) || c == '|' || BULLETS.indexOf(c) >= 0) {
            return ' ';
        }
        if (DASHES.indexOf(c) >= 0) {
            return '-';
        }
        if (isPicture(c)) {
            return ' ';
        }
        if (c >= CIRCLED_ONE && c < CIRCLED_ONE + 9) {
            return (char) ('1' + c - CIRCLED_ONE);
        }
        return switch (c) {
            case '\u2018', '\u2019', '\u00b4', '`' -> '\'';
            case '\u2044', '\u2215' -> '/';
            case '\uff06' -> '&';
            case '\uff08' -> '(';
            case '\uff09' -> ')';
            case '\uff0c', '\u3001' -> ',';
            case '\uff1a', '\u2236' -> ':';
            default -> c;
        };
    }

    /** Zero-width spaces and joiners, soft hyphens, marks of the direction of writing. */
    private static boolean isUnseen(char c) {
        return Character.getType(c) == Character.FORMAT;
    }

    /** "vine R -> vine L", "vine R (1-4) + vine L (5-8)": an arrow or a plus between figures parts them as a comma does. */
    private static void withoutArrows(StringBuilder line) {
        for (int at = 1; at < line.length(); at++) {
            boolean arrow = line.charAt(at) == '>' && "-=".indexOf(line.charAt(at - 1)) >= 0;
            boolean plus = line.charAt(at) == '+'
                    && line.substring(0, at).stripTrailing().matches(".*[)\\]]");
            if (arrow) {
                line.setCharAt(at - 1, ' ');
            }
            if (arrow || plus) {
                line.setCharAt(at, ',');
            }
        }
    }

    /** A circled 1; those to 9 follow it. */
    private static final char CIRCLED_ONE = '\u2460';

    /** Emoji, stars, arrows and the frames of keys: decoration, whose halves and marks are characters of their own. */
    private static boolean isPicture(char c) {
        boolean arrow = c >= '\u2190' && c <= '\u21ff';
        boolean mark = (c >= '\ufe00' && c <= '\ufe0f') || c == '\u20e3';
        boolean symbol = Character.getType(c) == Character.OTHER_SYMBOL && c != '\u00b0';
        return arrow || mark || symbol || Character.isSurrogate(c);
    }

    /** Dots that lead the eye to the counts at the end of the line. */
    private static void withoutLeaders(StringBuilder line) {
        int from = 0;
        for (int at = 0; at <= line.length(); at++) {
            boolean dot = at < line.length() && ".\u2026_".indexOf(line.charAt(at)) >= 0;
            if (!dot) {
                boolean leads = at - from >= SHORTEST_LEADER && at < line.length();
                for (int i = from; leads && i < at; i++) {
                    line.setCharAt(i, ' ');
                }
                from = at + 1;
            }
        }
    }

    /** Stars, equal signs and strokes that frame a line. */
    private static void withoutRules(StringBuilder line) {
        int first = 0;
        int last = line.length();
        while (first < last && (Scanner.isSpace(line.charAt(first)) || RULES.indexOf(line.charAt(first)) >= 0)) {
            first++;
        }
        while (last > first && (Scanner.isSpace(line.charAt(last - 1)) || RULES.indexOf(line.charAt(last - 1)) >= 0)) {
            last--;
        }
        boolean framed = first >= SHORTEST_RULE && line.length() - last >= SHORTEST_RULE && last > first;
        for (int i = 0; framed && i < line.length(); i++) {
            if (i < first || i >= last) {
                line.setCharAt(i, ' ');
            }
        }
    }

    private static final String RULES = "*=~_#-+";
    private static final int SHORTEST_RULE = 2;

    /** "- 1-2 Step", "* Step R": a bullet that is a plain character. */
    private static String withoutBullet(StringBuilder line) {
        int first = 0;
        while (first < line.length() && Scanner.isSpace(line.charAt(first))) {
            first++;
        }
        boolean bullet = first + 1 < line.length()
                && "-*>".indexOf(line.charAt(first)) >= 0
                && Scanner.isSpace(line.charAt(first + 1))
                && CountGroup.read(line.substring(first + 1)).isPresent();
        if (bullet) {
            line.setCharAt(first, ' ');
        }
        return line.toString();
    }
}
