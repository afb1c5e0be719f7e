package roundwright.desktop.sheets;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.Optional;
import roundwright.desktop.look.Flowing;
import roundwright.desktop.look.Painted;
import roundwright.desktop.look.Space;
import roundwright.desktop.look.Tone;

/** A printed page on the screen, as large as it fits. */
final class PagePicture extends Painted implements Flowing {
    private static final double HIGH = 470;

    private transient Optional<BufferedImage> page = Optional.empty();

    void show(BufferedImage image, String words) {
        page = Optional.of(image);
        getAccessibleContext().setAccessibleName(words);
        repaint();
    }

    @Override
    public int heightFor(int width) {
        return Math.min(Space.points(HIGH), (int) (width * Math.sqrt(2)));
    }

    @Override
    public Dimension getPreferredSize() {
        int width = getWidth() > 0 ? getWidth() : Space.points(HIGH);
        return new Dimension(width, heightFor(width));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D smooth = Space.smooth(graphics);
        smooth.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        page.ifPresent(image -> {
            double scale = Math.min((getWidth() - 2.0) / image.getWidth(), (getHeight() - 2.0) / image.getHeight());
            int wide = (int) (image.getWidth() * scale);
            int high = (int) (image.getHeight() * scale);
            int left = (getWidth() - wide) / 2;
            smooth.drawImage(image, left, 1, wide, high, null);
            smooth.setColor(Tone.EDGE.color());
            smooth.drawRect(left, 1, wide, high);
        });
        smooth.dispose();
    }
}
