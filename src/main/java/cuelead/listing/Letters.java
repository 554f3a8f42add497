package cuelead.listing;

/** What is known of the letters that are printed. */
interface Letters {
    /** How strongly they are printed. */
    enum Face {
        PLAIN,
        BOLD,
        QUIET
    }

    /** A text with nothing in it that cannot be printed: other letters stand in for those. */
    String printable(String text);

    /** The width of such a text in points; size in points. */
    double widthPoints(String printable, double sizePoints);
}
