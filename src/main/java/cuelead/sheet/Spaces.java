package cuelead.sheet;

/** Steps over the spaces of a line. */
final class Spaces {
    private Spaces() {}

    /** Index behind the last character before this index that is no space. */
    static int back(String line, int from) {
        int at = from;
        while (at > 0 && Scanner.isSpace(line.charAt(at - 1))) {
            at--;
        }
        return at;
    }

    /** Index of the first character from this index on that is no space; the length of the line without one. */
    static int forward(String line, int from) {
        int at = from;
        while (at < line.length() && Scanner.isSpace(line.charAt(at))) {
            at++;
        }
        return at;
    }
}
