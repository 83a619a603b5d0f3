package org.tunica.picture;

import java.awt.Color;
import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** A sheet as the bytes of a file; needs no display. */
final class Canvas {
    private static final String SVG = "http://www.w3.org/2000/svg";

    private final Sheet sheet;
    private final String kind;
    private final double scale;

    /**
     * @param kind what it is, in fixed words: an SVG comment is not escaped, so no words of a bundle or a case may be in it
     * @throws IllegalArgumentException for a width outside the widths of a {@link WindowPicture}
     */
    Canvas(Sheet sheet, String kind, int widthPx) {
        if (widthPx < WindowPicture.LEAST_WIDTH_PX || widthPx > WindowPicture.MOST_WIDTH_PX) {
            throw new IllegalArgumentException("widthPx must be in " + WindowPicture.LEAST_WIDTH_PX + ".."
                    + WindowPicture.MOST_WIDTH_PX + ", got " + widthPx);
        }
        System.setProperty("java.awt.headless", "true");
        this.sheet = sheet;
        this.kind = kind;
        this.scale = (double) widthPx / Page.WIDTH;
    }

    byte[] png() {
        BufferedImage image = new BufferedImage(px(Page.WIDTH), px(height()), BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, image.getWidth(), image.getHeight());
        graphics.scale(scale, scale);
        sheet.draw(graphics);
        graphics.dispose();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, "png", bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    byte[] svg() {
        return written(root());
    }

    /** SVG of shapes and text alone. */
    byte[] shapes() {
        return written(PlainShapes.of(root()));
    }

    private Element root() {
        SVGGeneratorContext context = SVGGeneratorContext.createDefault(document());
        context.setComment(kind);
        SVGGraphics2D graphics = new SVGGraphics2D(context, false);
        int height = height();
        graphics.setSVGCanvasSize(new Dimension(px(Page.WIDTH), px(height)));
        graphics.scale(scale, scale);
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, Page.WIDTH, height);
        sheet.draw(graphics);
        return titled(graphics.getRoot(), height);
    }

    private Element titled(Element root, int height) {
        root.setAttribute("role", "img");
        root.setAttribute("viewBox", "0 0 " + px(Page.WIDTH) + " " + px(height));
        Element title = root.getOwnerDocument().createElementNS(SVG, "title");
        title.setTextContent(sheet.words().title());
        root.insertBefore(title, root.getFirstChild());
        return root;
    }

    private static byte[] written(Element root) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            TransformerFactory factory = TransformerFactory.newInstance();
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.newTransformer().transform(new DOMSource(root), new StreamResult(bytes));
        } catch (TransformerException e) {
            throw new IllegalStateException(e);
        }
        return bytes.toByteArray();
    }

    private static Document document() {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            return factory.newDocumentBuilder().getDOMImplementation().createDocument(SVG, "svg", null);
        } catch (ParserConfigurationException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Height of the page, found by drawing it once where nobody looks. */
    private int height() {
        Graphics2D nowhere = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB).createGraphics();
        int height = sheet.draw(nowhere);
        nowhere.dispose();
        return height;
    }

    private int px(int length) {
        return (int) Math.round(scale * length);
    }
}
