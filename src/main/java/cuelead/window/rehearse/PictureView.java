package cuelead.window.rehearse;

import cuelead.rehearse.CallsPicture;
import cuelead.rehearse.Look;
import cuelead.rehearse.Review;
import cuelead.window.frame.Palette;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.Optional;
import javax.swing.JPanel;

/** The picture of all calls, as large as its place. */
final class PictureView extends JPanel {
    private static final long serialVersionUID = 1L;

    private transient Optional<Review> review = Optional.empty();
    private transient Optional<BufferedImage> drawn = Optional.empty();
    private transient Palette palette = Palette.DARK;

    PictureView() {
        setPreferredSize(new Dimension(700, 320));
        setMinimumSize(new Dimension(300, 200));
        getAccessibleContext().setAccessibleName("All calls against the beat; the list below says the same in words");
    }

    void show(Review other) {
        review = Optional.of(other);
        drawn = Optional.empty();
        repaint();
    }

    void look(Palette other) {
        palette = other;
        drawn = Optional.empty();
        repaint();
    }

    @Override
    protected void paintComponent(Graphics on) {
        super.paintComponent(on);
        Graphics2D copy = (Graphics2D) on.create();
        double scale = copy.getTransform().getScaleX();
        int width = (int) Math.ceil(getWidth() * scale);
        int height = (int) Math.ceil(getHeight() * scale);
        if (review.isPresent() && width > 0 && height > 0) {
            if (drawn.filter(image -> image.getWidth() == width && image.getHeight() == height)
                    .isEmpty()) {
                drawn = Optional.of(drawn(review.get(), width, height, scale));
            }
            copy.drawImage(drawn.get(), 0, 0, getWidth(), getHeight(), null);
        }
        copy.dispose();
    }

    private BufferedImage drawn(Review of, int width, int height, double scale) {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D on = image.createGraphics();
        on.scale(scale, scale);
        Look look = palette.equals(Palette.DARK) ? Look.NIGHT : Look.PAPER;
        CallsPicture.of(of, look, getWidth(), getHeight()).paint(on, getWidth(), getHeight());
        on.dispose();
        return image;
    }
}
