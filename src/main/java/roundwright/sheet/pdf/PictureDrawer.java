package roundwright.sheet.pdf;

import com.openhtmltopdf.extend.FSObjectDrawer;
import com.openhtmltopdf.extend.FSObjectDrawerFactory;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.render.RenderingContext;
import java.awt.Shape;
import java.util.Map;
import org.w3c.dom.Element;
import roundwright.sheet.markup.Picture;

/** Draws pictures as vectors. */
record PictureDrawer(PdfTree tree) implements FSObjectDrawerFactory, FSObjectDrawer {
    @Override
    public FSObjectDrawer createDrawer(Element element) {
        return this;
    }

    @Override
    public boolean isReplacedObject(Element element) {
        return element.getAttribute("type").equals(PdfTree.PICTURE);
    }

    @Override
    public Map<Shape, String> drawObject(
            Element element,
            double x,
            double y,
            double width,
            double height,
            OutputDevice device,
            RenderingContext context,
            int dotsPerPixel) {
        Picture picture = tree.picture(Integer.parseInt(element.getAttribute("data")));
        float across = (float) width / dotsPerPixel;
        float down = (float) height / dotsPerPixel;
        device.drawWithGraphics((float) x, (float) y, across, down, graphics -> {
            graphics.scale(across / picture.width(), down / picture.height());
            picture.draw(graphics);
        });
        return Map.of();
    }
}
