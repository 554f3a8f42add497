package cuelead.document;

/**
 * A letter where it stands on its page. Lengths are points, from the page's top left corner, after turning the page so
 * that its text runs from left to right.
 *
 * @param text     one letter, or several of a ligature
 * @param left     its left edge
 * @param right    its right edge
 * @param baseline where it stands
 * @param size     of its font
 */
record Glyph(String text, double left, double right, double baseline, double size) {
    boolean isSpace() {
        return text.isBlank() || text.equals("\u00a0");
    }
}
