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
import org.tunica.physics.SegmentWindow;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** A heat window drawn as SVG or PNG; needs no display. */
public final class WindowPicture {
    /** Narrowest picture in which the words can be read, px. */
    public static final int LEAST_WIDTH_PX = 500;

    /** Widest picture drawn, px. */
    public static final int MOST_WIDTH_PX = 4000;

    /** Width of a picture unless another is asked for, px. */
    public static final int USUAL_WIDTH_PX = 1000;

    private static final String SVG = "http://www.w3.org/2000/svg";

    private final WindowSheet sheet;
    private final WindowWords words;
    private final double scale;

    private WindowPicture(WindowSheet sheet, WindowWords words, double scale) {
        this.sheet = sheet;
        this.words = words;
        this.scale = scale;
    }

    /**
     * The picture of a window.
     *
     * @throws IllegalArgumentException for a width outside {@link #LEAST_WIDTH_PX} to {@link #MOST_WIDTH_PX}
     */
    public static WindowPicture of(SegmentWindow window, WindowWords words, int widthPx) {
        if (widthPx < LEAST_WIDTH_PX || widthPx > MOST_WIDTH_PX) {
            throw new IllegalArgumentException(
                    "widthPx must be in " + LEAST_WIDTH_PX + ".." + MOST_WIDTH_PX + ", got " + widthPx);
        }
        System.setProperty("java.awt.headless", "true");
        return new WindowPicture(new WindowSheet(window, words), words, (double) widthPx / WindowSheet.WIDTH);
    }

    /** PNG bytes. */
    public byte[] png() {
        BufferedImage image = new BufferedImage(px(WindowSheet.WIDTH), px(height()), BufferedImage.TYPE_INT_RGB);
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

    /** SVG in UTF-8, its text kept as text. */
    public byte[] svg() {
        SVGGeneratorContext context = SVGGeneratorContext.createDefault(document());
        context.setComment("a heat window"); // a comment is not escaped: no words of a bundle or a case in it
        SVGGraphics2D graphics = new SVGGraphics2D(context, false);
        int height = height();
        graphics.setSVGCanvasSize(new Dimension(px(WindowSheet.WIDTH), px(height)));
        graphics.scale(scale, scale);
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, WindowSheet.WIDTH, height);
        sheet.draw(graphics);
        return written(titled(graphics.getRoot(), height));
    }

    private Element titled(Element root, int height) {
        root.setAttribute("role", "img");
        root.setAttribute("viewBox", "0 0 " + px(WindowSheet.WIDTH) + " " + px(height));
        Element title = root.getOwnerDocument().createElementNS(SVG, "title");
        title.setTextContent(words.title());
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
