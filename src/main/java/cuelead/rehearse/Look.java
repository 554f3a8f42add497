package cuelead.rehearse;

import java.awt.Color;

/**
 * The colours of a {@link CallsPicture}. None tells anything by its hue alone: marks have different shapes and places.
 *
 * @param ground  what everything stands on
 * @param ink     what is read, and what was missed
 * @param grid    lines that help
 * @param onTime  marks of a call, and so on
 * @param besides what was said besides
 */
public record Look(
        Color ground, Color ink, Color grid, Color onTime, Color early, Color late, Color other, Color besides) {
    /** For files and daylight. */
    public static final Look PAPER = new Look(
            Color.WHITE,
            new Color(0x212121),
            new Color(0x9E9E9E),
            new Color(0x2E7D32),
            new Color(0x1565C0),
            new Color(0xC62828),
            new Color(0x6A1B9A),
            new Color(0x8D4E00));

    /** For a dark hall. */
    public static final Look NIGHT = new Look(
            new Color(0x17121A),
            new Color(0xF7F0E6),
            new Color(0x6F6474),
            new Color(0x8CCF90),
            new Color(0x7FC0FF),
            new Color(0xFF9B90),
            new Color(0xD7A3E6),
            new Color(0xFFC27A));
}
