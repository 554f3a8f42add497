package cuelead.window.frame;

import java.awt.Color;

/**
 * The colours of a stand. On the floor view each of them keeps a contrast of at least 7 : 1 to the ground, and none tells
 * anything by its hue alone: what is now is also larger, what comes next is also smaller and marked.
 *
 * @param ground what everything stands on
 * @param field  the room and the blocks of a wall, a little off the ground; nothing is read by it alone
 * @param ink    what is read
 * @param quiet  what is read at leisure
 * @param now    what is danced and called now
 * @param next   what comes after it
 */
public record Palette(Color ground, Color field, Color ink, Color quiet, Color now, Color next) {
    /** For a dark hall: nothing that glares. */
    public static final Palette DARK = new Palette(
            new Color(0x17, 0x12, 0x1a),
            new Color(0x2a, 0x22, 0x30),
            new Color(0xf7, 0xf0, 0xe6),
            new Color(0xcb, 0xbf, 0xcd),
            new Color(0xff, 0xb4, 0x3d),
            new Color(0x8f, 0xd3, 0xe8));

    /** For daylight. */
    public static final Palette LIGHT = new Palette(
            new Color(0xfb, 0xf8, 0xf2),
            new Color(0xea, 0xe3, 0xd8),
            new Color(0x1d, 0x16, 0x20),
            new Color(0x4b, 0x40, 0x4f),
            new Color(0x7d, 0x2e, 0x00),
            new Color(0x00, 0x49, 0x5e));
}
