package cuelead.listing;

import java.util.Locale;
import java.util.Set;

/**
 * A sheet of paper, upright.
 *
 * @param widthPoints  1 point = 1/72 inch
 * @param heightPoints the same
 */
public record Paper(double widthPoints, double heightPoints) {
    public static final Paper A4 = new Paper(595.28, 841.89);
    public static final Paper LETTER = new Paper(612, 792);

    /** More than any printer leaves white. */
    static final double MARGIN_POINTS = 42;

    private static final double LEAST_POINTS = 250;
    private static final Set<String> LETTER_COUNTRIES =
            Set.of("US", "CA", "MX", "PH", "CL", "CO", "VE", "GT", "CR", "PA", "SV", "HN", "NI", "DO", "PR");

    public Paper {
        if (!(widthPoints >= LEAST_POINTS && heightPoints >= LEAST_POINTS)) {
            throw new IllegalArgumentException("paper of " + widthPoints + " x " + heightPoints + " points");
        }
    }

    /** What is usual in a country. */
    public static Paper of(Locale country) {
        return LETTER_COUNTRIES.contains(country.getCountry()) ? LETTER : A4;
    }

    /** Within the margins. */
    double textWidthPoints() {
        return widthPoints - 2 * MARGIN_POINTS;
    }
}
