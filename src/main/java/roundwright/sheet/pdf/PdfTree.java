package roundwright.sheet.pdf;

import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import roundwright.sheet.markup.Element;
import roundwright.sheet.markup.Node;
import roundwright.sheet.markup.Picture;
import roundwright.sheet.markup.Text;

/** A document as the tree that the renderer takes. Pictures stand in it by number. */
final class PdfTree {
    static final String PICTURE = "roundwright/picture";

    private final Document document;
    private final List<Picture> pictures = new ArrayList<>();

    PdfTree(Element html) {
        try {
            document = DocumentBuilderFactory.newInstance().newDocumentBuilder().newDocument();
        } catch (ParserConfigurationException impossible) {
            throw new IllegalStateException("no document can be made", impossible);
        }
        document.appendChild(element(html));
    }

    Document document() {
        return document;
    }

    Picture picture(int number) {
        return pictures.get(number);
    }

    private org.w3c.dom.Element element(Element element) {
        org.w3c.dom.Element made = document.createElement(element.name());
        element.attributes().forEach(made::setAttribute);
        element.children().forEach(child -> made.appendChild(node(child)));
        return made;
    }

    private org.w3c.dom.Node node(Node node) {
        if (node instanceof Element element) {
            return element(element);
        }
        return node instanceof Picture picture ? picture(picture) : text((Text) node);
    }

    private org.w3c.dom.Node text(Text text) {
        org.w3c.dom.DocumentFragment pieces = document.createDocumentFragment();
        for (OutlinedText.Run run : OutlinedText.runs(text.words())) {
            pieces.appendChild(run.drawing()
                    .<org.w3c.dom.Node>map(this::outlined)
                    .orElseGet(() -> document.createTextNode(run.words())));
        }
        return pieces;
    }

    private org.w3c.dom.Element outlined(Picture drawing) {
        return object(
                drawing,
                "width: " + OutlinedText.width(drawing) + "em; height: " + OutlinedText.HEIGHT + "em; vertical-align: -"
                        + OutlinedText.DEPTH + "em");
    }

    private org.w3c.dom.Element picture(Picture picture) {
        return object(picture, "width: " + picture.width() + "pt; height: " + picture.height() + "pt");
    }

    private org.w3c.dom.Element object(Picture picture, String size) {
        org.w3c.dom.Element object = document.createElement("object");
        object.setAttribute("type", PICTURE);
        object.setAttribute("data", String.valueOf(pictures.size()));
        object.setAttribute("alt", picture.words());
        object.setAttribute("style", size);
        pictures.add(picture);
        return object;
    }
}
