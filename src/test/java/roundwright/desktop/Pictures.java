package roundwright.desktop;

import java.awt.Color;
import java.awt.Component;
import java.awt.Container;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import javax.swing.JPanel;
import roundwright.desktop.look.Tone;

/** Lays components out and paints them without a window. */
public final class Pictures {
    /** Where pictures are written. */
    public static final Path FOLDER = Path.of("target", "pictures");

    private Pictures() {}

    /** Lays a component out at a size in pixels, as a window would. */
    public static <C extends Component> C layOut(C component, int width, int height) {
        JPanel holder = new Nowhere();
        holder.setSize(width, height);
        holder.add(component);
        holder.addNotify();
        component.setBounds(0, 0, width, height);
        settle(component);
        settle(component);
        return component;
    }

    /** Has a peer, so that everything in it is laid out, but says that it is on no screen: nothing then asks for its place there. */
    private static final class Nowhere extends JPanel {
        Nowhere() {
            super(null);
        }

        @Override
        public boolean isShowing() {
            return false;
        }
    }

    private static void settle(Component component) {
        component.doLayout();
        if (component instanceof Container container) {
            for (Component child : container.getComponents()) {
                settle(child);
            }
        }
    }

    public static BufferedImage paint(Component component) {
        BufferedImage image =
                new BufferedImage(component.getWidth(), component.getHeight(), BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        Color ground = Tone.BACKGROUND.color();
        graphics.setColor(ground);
        graphics.fillRect(0, 0, image.getWidth(), image.getHeight());
        component.paint(graphics);
        graphics.dispose();
        return image;
    }

    public static void write(BufferedImage image, String name) {
        try {
            Files.createDirectories(FOLDER);
            ImageIO.write(image, "png", FOLDER.resolve(name + ".png").toFile());
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }
}
