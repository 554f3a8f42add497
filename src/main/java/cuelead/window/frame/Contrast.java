package cuelead.window.frame;

import java.awt.Color;

/** How well a colour stands out from another: WCAG 2.2, "contrast ratio" and "relative luminance" (section 5, definitions). */
public final class Contrast {
    private static final double FLARE = 0.05;

    private Contrast() {}

    /** From 1 (the same) to 21 (black on white). */
    public static double ratio(Color one, Color other) {
        double a = luminance(one) + FLARE;
        double b = luminance(other) + FLARE;
        return Math.max(a, b) / Math.min(a, b);
    }

    private static double luminance(Color colour) {
        return 0.2126 * linear(colour.getRed())
                + 0.7152 * linear(colour.getGreen())
                + 0.0722 * linear(colour.getBlue());
    }

    /** Of a channel from 0 to 255, in sRGB. */
    private static double linear(int channel) {
        double value = channel / 255.0;
        return value <= 0.04045 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4);
    }
}
