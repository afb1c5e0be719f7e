package roundwright.sheet.markup;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import javax.imageio.ImageIO;

/** A picture as a file of its own, on white. */
public final class PictureFile {
    private PictureFile() {}

    /** As SVG: strokes that stay sharp at any size. */
    public static byte[] svg(Picture picture) {
        Element svg = SvgPicture.of(picture).with("xmlns", "http://www.w3.org/2000/svg");
        String text = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + HtmlText.of(svg) + "\n";
        return text.getBytes(StandardCharsets.UTF_8);
    }

    /** As PNG, so many pixels a point. */
    public static byte[] png(Picture picture, double pixels) {
        BufferedImage image = new BufferedImage(
                (int) Math.ceil(picture.width() * pixels),
                (int) Math.ceil(picture.height() * pixels),
                BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, image.getWidth(), image.getHeight());
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        graphics.scale(pixels, pixels);
        picture.draw(graphics);
        graphics.dispose();
        return bytes(image);
    }

    private static byte[] bytes(BufferedImage image) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, "png", bytes);
        } catch (IOException cannot) {
            throw new IllegalStateException("a picture of " + image.getWidth() + " pixels", cannot);
        }
        return bytes.toByteArray();
    }
}
