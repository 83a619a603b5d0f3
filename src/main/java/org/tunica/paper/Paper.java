package org.tunica.paper;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** Prints documents. Safe for several threads. */
public final class Paper {
    /** Without it a browser falls back to the ways of old pages. */
    private static final String HTML = "<!DOCTYPE html>\n";

    private static final Paper USUAL = new Paper();

    private final PageWriter pages;
    private final PdfWriter pdf;

    private Paper() {
        this.pages = new PageWriter(new String(resource("paper.css"), StandardCharsets.UTF_8));
        this.pdf = new PdfWriter(resource("DejaVuSansCondensed.ttf"), resource("DejaVuSansCondensed-Bold.ttf"));
    }

    /**
     * The document as XHTML that stands alone: it needs no other file and fetches none.
     *
     * @throws IllegalArgumentException for a drawing that holds more than shapes and text
     */
    public static String xhtml(Document document) {
        return xhtml(document, Lettering.USUAL);
    }

    /** {@link #xhtml(Document)} in larger or usual letters. */
    public static String xhtml(Document document, Lettering lettering) {
        return HTML + USUAL.pages.write(document, lettering);
    }

    /**
     * The document as PDF on A4, its fonts inside.
     *
     * @throws IllegalArgumentException as {@link #xhtml}
     */
    public static byte[] pdf(Document document) {
        return pdf(document, Lettering.USUAL);
    }

    /** {@link #pdf(Document)} in larger or usual letters. */
    public static byte[] pdf(Document document, Lettering lettering) {
        return USUAL.pdf.write(USUAL.pages.write(document, lettering));
    }

    /** The PDF of a document that was written as XHTML before, by {@link #xhtml}. */
    public static byte[] pdf(String xhtml) {
        return USUAL.pdf.write(xhtml.startsWith(HTML) ? xhtml.substring(HTML.length()) : xhtml);
    }

    private static byte[] resource(String name) {
        try (InputStream in = Paper.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("the program lacks its file paper/" + name);
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
