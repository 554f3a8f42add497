package cuelead.window;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import cuelead.window.frame.Palette;
import java.awt.Color;
import java.util.Locale;
import java.util.Map;

/** The colours of usual controls. Used on the thread of events. */
final class Clothing {
    private Clothing() {}

    /** All windows wear a palette from now on. */
    static void wear(Palette palette) {
        FlatLaf.setGlobalExtraDefaults(Map.of(
                "@background", hex(palette.ground()),
                "@foreground", hex(palette.ink()),
                "@accentColor", hex(palette.now()),
                "@componentBackground", hex(palette.field()),
                "Component.linkColor", "null")); // without a colour for links, nothing of HTML is loaded
        if (palette.equals(Palette.DARK)) {
            FlatDarkLaf.setup();
        } else {
            FlatLightLaf.setup();
        }
        FlatLaf.updateUI();
    }

    private static String hex(Color colour) {
        return String.format(Locale.ROOT, "#%06x", colour.getRGB() & 0xffffff);
    }
}
