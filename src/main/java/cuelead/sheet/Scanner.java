package cuelead.sheet;

import cuelead.sheet.Token.Kind;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Cuts a line into tokens in one pass; every character belongs to a token or is space. Never fails. */
final class Scanner {
    private static final String VULGAR = "\u00bc\u00bd\u00be\u215b\u215c\u215d\u215e";
    private static final List<String> VULGAR_IN_FIGURES = List.of("1/4", "1/2", "3/4", "1/8", "3/8", "5/8", "7/8");

    private final String line;
    private final List<Token> tokens = new ArrayList<>();
    private int at;

    private Scanner(String line, int from) {
        this.line = line;
        this.at = from;
    }

    static List<Token> tokens(String line) {
        return tokens(line, 0);
    }

    /** The tokens from a 0-based index on; columns stay those of the whole line. */
    static List<Token> tokens(String line, int from) {
        Scanner scanner = new Scanner(line, from);
        while (scanner.at < line.length()) {
            scanner.next();
        }
        return scanner.tokens;
    }

    /** The first word from a 0-based index on; empty where none is left. */
    static Optional<String> firstWord(String line, int from) {
        Scanner scanner = new Scanner(line, from);
        while (scanner.at < line.length()) {
            scanner.next();
            for (Token token : scanner.tokens) {
                if (token.is(Kind.WORD)) {
                    return Optional.of(token.text());
                }
            }
            scanner.tokens.clear();
        }
        return Optional.empty();
    }

    /** Where a word ends that begins at this 0-based index; the index itself where none does. */
    static int wordEnd(String line, int from) {
        int end = from;
        while (end < line.length()
                && (Character.isLetter(line.charAt(end))
                        || (end > from && (Character.isDigit(line.charAt(end)) || isApostrophe(line.charAt(end)))))) {
            end++;
        }
        return end;
    }

    private void next() {
        char c = line.charAt(at);
        if (isSpace(c)) {
            at++;
        } else if (Character.isLetter(c)) {
            word();
        } else if (isDigit(c)) {
            number();
        } else if (VULGAR.indexOf(c) >= 0) {
            add(Kind.FRACTION, VULGAR_IN_FIGURES.get(VULGAR.indexOf(c)), 1);
        } else if (isQuote(c)) {
            quoted();
        } else {
            mark(c);
        }
    }

    private void mark(char c) {
        switch (c) {
            case '(', '[', '{' -> add(Kind.OPEN, String.valueOf(c), 1);
            case ')', ']', '}' -> add(Kind.CLOSE, String.valueOf(c), 1);
            case ',', ';', ':', '/' -> add(Kind.SEPARATOR, String.valueOf(c), 1);
            case '&', '+' -> add(Kind.AMPERSAND, "&", 1);
            case '.', '!', '?' -> stop(c);
            case '-', '\u2013', '\u2014', '\u2212' -> dash();
            default -> add(Kind.MARK, String.valueOf(c), 1);
        }
    }

    /** A stop parts two sentences; behind an abbreviation ("fwd. on R") it does not. */
    private void stop(char c) {
        int next = skipSpaces(at + 1);
        boolean endsSentence = next >= line.length() || Character.isUpperCase(line.charAt(next));
        add(endsSentence ? Kind.SEPARATOR : Kind.MARK, String.valueOf(c), 1);
    }

    /** A dash between spaces parts two actions; a hyphen only joins a name: kick-ball-change. */
    private void dash() {
        boolean parts =
                (at == 0 || isSpace(line.charAt(at - 1))) && (at + 1 >= line.length() || isSpace(line.charAt(at + 1)));
        add(parts ? Kind.SEPARATOR : Kind.MARK, "-", 1);
    }

    private void word() {
        int start = at;
        at = wordEnd(line, at);
        String text = plain(line.substring(start, at));
        at += line.startsWith("(s)", at) ? 3 : 0;
        if (text.equals("wol") || text.equals("wor")) {
            tokens.add(new Token(Kind.WORD, "weight", start + 1));
            tokens.add(new Token(Kind.WORD, text.substring(2), start + 3));
        } else if (isBothFeet(text)) {
            at += 2;
            tokens.add(new Token(Kind.WORD, "both", start + 1));
        } else if (isFeet(text)) {
            for (int i = 0; i < text.length(); i++) {
                tokens.add(new Token(Kind.WORD, text.substring(i, i + 1), start + i + 1));
            }
        } else {
            tokens.add(new Token(Kind.WORD, text, start + 1));
        }
    }

    /** "R+L": both feet at once. */
    private boolean isBothFeet(String text) {
        boolean foot = text.equals("r") || text.equals("l");
        boolean joined = at + 1 < line.length() && "+&/".indexOf(line.charAt(at)) >= 0;
        boolean ends = at + 2 >= line.length() || !Character.isLetterOrDigit(line.charAt(at + 2));
        char other = text.equals("r") ? 'l' : 'r';
        return foot && joined && ends && Character.toLowerCase(line.charAt(at + 1)) == other;
    }

    /** "RLR": feet in a row. */
    private static boolean isFeet(String text) {
        if (text.length() < 2 || text.length() > 8) {
            return false;
        }
        for (int i = 0; i < text.length(); i++) {
            char expected = i % 2 == 0 ? text.charAt(0) : (text.charAt(0) == 'r' ? 'l' : 'r');
            if ((text.charAt(0) != 'r' && text.charAt(0) != 'l') || text.charAt(i) != expected) {
                return false;
            }
        }
        return true;
    }

    private void number() {
        int start = at;
        String digits = digits();
        if (at + 2 < line.length() && ":.hH".indexOf(line.charAt(at)) >= 0 && isClock(digits)) {
            String minutes = line.substring(at + 1, at + 3);
            boolean ends = at + 3 >= line.length() || !isDigit(line.charAt(at + 3));
            if (ends && isFacing(Integer.parseInt(digits), minutes)) {
                at += 3;
                tokens.add(new Token(Kind.CLOCK, Integer.parseInt(digits) + ":" + minutes, start + 1));
                return;
            }
        }
        if (isClock(digits) && Integer.parseInt(digits) % 3 == 0 && isOClock()) {
            tokens.add(new Token(Kind.CLOCK, Integer.parseInt(digits) + ":00", start + 1));
            return;
        }
        if (at + 1 < line.length() && line.charAt(at) == '/' && isDigit(line.charAt(at + 1))) {
            at++;
            tokens.add(new Token(Kind.FRACTION, digits + "/" + digits(), start + 1));
            return;
        }
        wordOfDigits(start, digits);
    }

    /** "9 o'clock", "9 oclock". */
    private boolean isOClock() {
        int from = skipSpaces(at);
        for (String word : List.of("o'clock", "oclock", "o clock")) {
            if (line.regionMatches(true, from, word, 0, word.length())) {
                at = from + word.length();
                return true;
            }
        }
        return false;
    }

    /** "3rd" is the number 3; "2x" is a word. */
    private void wordOfDigits(int start, String digits) {
        int end = at;
        while (end < line.length() && Character.isLetter(line.charAt(end))) {
            end++;
        }
        String letters = plain(line.substring(at, end));
        boolean ordinal = List.of("st", "nd", "rd", "th").contains(letters);
        at = letters.isEmpty() || ordinal || letters.equals("x") ? end : at;
        boolean times = letters.equals("x");
        Kind kind = times ? Kind.WORD : ordinal ? Kind.ORDINAL : Kind.NUMBER;
        tokens.add(new Token(kind, times ? digits + "x" : digits, start + 1));
    }

    private String digits() {
        int start = at;
        while (at < line.length() && isDigit(line.charAt(at))) {
            at++;
        }
        return line.substring(start, at);
    }

    /** The four walls and the four corners: 12:00, 1:30, 3:00 ... */
    private static boolean isFacing(int hour, String minutes) {
        return minutes.equals("00") ? hour % 3 == 0 : minutes.equals("30") && hour % 3 == 1;
    }

    private static boolean isClock(String digits) {
        return digits.length() <= 2 && Integer.parseInt(digits) >= 1 && Integer.parseInt(digits) <= 12;
    }

    private void quoted() {
        int end = at + 1;
        while (end < line.length() && !isQuote(line.charAt(end))) {
            end++;
        }
        boolean closed = end < line.length();
        String text = line.substring(at + 1, end);
        tokens.add(new Token(closed ? Kind.QUOTED : Kind.UNCLOSED_QUOTE, text, at + 1));
        at = closed ? end + 1 : end;
    }

    private void add(Kind kind, String text, int length) {
        tokens.add(new Token(kind, text, at + 1));
        at += length;
    }

    private int skipSpaces(int from) {
        int index = from;
        while (index < line.length() && isSpace(line.charAt(index))) {
            index++;
        }
        return index;
    }

    /** Lower case, accents taken off: chass\u00e9 is chasse. */
    static String plain(String word) {
        String lower = word.toLowerCase(Locale.ROOT);
        if (isPlain(lower)) {
            return lower;
        }
        String apart = Normalizer.normalize(lower, Normalizer.Form.NFKD);
        StringBuilder letters = new StringBuilder(apart.length());
        for (int i = 0; i < apart.length(); i++) {
            char c = apart.charAt(i);
            if (Character.getType(c) != Character.NON_SPACING_MARK) {
                letters.append(c == '\u2019' ? '\'' : c);
            }
        }
        return letters.toString();
    }

    private static boolean isPlain(String word) {
        for (int i = 0; i < word.length(); i++) {
            if (word.charAt(i) >= 128) {
                return false;
            }
        }
        return true;
    }

    static boolean isSpace(char c) {
        return Character.isWhitespace(c) || c == '\u00a0' || c == '\ufeff';
    }

    static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    static boolean isQuote(char c) {
        return c == '"' || c == '\u201c' || c == '\u201d' || c == '\u201e' || c == '\uff02';
    }

    private static boolean isApostrophe(char c) {
        return c == '\'' || c == '\u2019';
    }
}
