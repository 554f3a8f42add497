package cuelead.window.floor;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.GraphicsConfiguration;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What does not move within a beat, drawn once for all frames that show it, and of it only what has changed. Used on the
 * thread of events.
 */
final class StillPicture {
    /** In what size a picture was drawn. */
    private record Drawn(Dimension size, AffineTransform scale) {}

    private final Map<FloorPainter.Region, List<Object>> shown = new EnumMap<>(FloorPainter.Region.class);
    private Optional<Drawn> drawn = Optional.empty();
    private Optional<BufferedImage> image = Optional.empty();

    /** The picture of a scene, in the pixels of the screen that it is for. */
    BufferedImage of(FloorScene scene, FloorPainter painter, Dimension size, GraphicsConfiguration screen) {
        Drawn wanted = new Drawn(size, screen.getDefaultTransform());
        if (drawn.filter(wanted::equals).isEmpty()) {
            int width = Math.max(1, (int) Math.ceil(size.width * wanted.scale().getScaleX()));
            int height =
                    Math.max(1, (int) Math.ceil(size.height * wanted.scale().getScaleY()));
            image = Optional.of(screen.createCompatibleImage(width, height));
            drawn = Optional.of(wanted);
            shown.clear();
        }
        BufferedImage picture = image.orElseThrow();
        for (FloorPainter.Region region : FloorPainter.Region.values()) {
            List<Object> now = region.shown(scene);
            if (!now.equals(shown.put(region, now))) {
                Graphics2D on = picture.createGraphics();
                on.transform(wanted.scale());
                painter.paint(region, on, size.width, size.height, scene);
                on.dispose();
            }
        }
        return picture;
    }

    /** Draws all of it anew the next time. */
    void forget() {
        drawn = Optional.empty();
    }
}
