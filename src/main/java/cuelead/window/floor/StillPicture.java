package cuelead.window.floor;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.GraphicsConfiguration;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.util.Optional;

/** What does not move within a beat, drawn once for all frames that show it. Used on the thread of events. */
final class StillPicture {
    /** What a picture shows, and how large. */
    private record Shown(FloorScene scene, Dimension size, AffineTransform scale) {}

    private Optional<Shown> shown = Optional.empty();
    private Optional<BufferedImage> image = Optional.empty();

    /** The picture of a scene, in the pixels of the screen that it is for. */
    BufferedImage of(FloorScene scene, FloorPainter painter, Dimension size, GraphicsConfiguration screen) {
        Shown wanted = new Shown(scene.still(), size, screen.getDefaultTransform());
        if (shown.filter(wanted::equals).isEmpty()) {
            int width = Math.max(1, (int) Math.ceil(size.width * wanted.scale().getScaleX()));
            int height =
                    Math.max(1, (int) Math.ceil(size.height * wanted.scale().getScaleY()));
            BufferedImage picture = image.filter(is -> is.getWidth() == width && is.getHeight() == height)
                    .orElseGet(() -> screen.createCompatibleImage(width, height));
            Graphics2D on = picture.createGraphics();
            on.transform(wanted.scale());
            painter.paintStill(on, size.width, size.height, scene);
            on.dispose();
            image = Optional.of(picture);
            shown = Optional.of(wanted);
        }
        return image.orElseThrow();
    }

    /** Draws it anew the next time. */
    void forget() {
        shown = Optional.empty();
    }
}
