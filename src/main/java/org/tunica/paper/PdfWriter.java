package org.tunica.paper;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;

/** Lays XHTML out on pages. Fetches nothing: what a page needs is in it. */
final class PdfWriter {
    private static final String FAMILY = "DejaVu Sans Condensed";
    private static final int REGULAR = 400;
    private static final int BOLD = 700;

    /** Any fixed number: the writer would else take the time of day for the id of the file. */
    private static final long FIXED_ID = 1;

    static {
        XRLog.setLoggingEnabled(false);
    }

    private final byte[] regular;
    private final byte[] bold;

    PdfWriter(byte[] regular, byte[] bold) {
        this.regular = regular;
        this.bold = bold;
    }

    byte[] write(String xhtml) {
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.withW3cDocument(Xml.parse(xhtml), null);
        builder.useUriResolver((base, uri) -> null);
        builder.useSVGDrawer(new BatikSVGDrawer());
        builder.useFont(() -> new ByteArrayInputStream(regular), FAMILY, REGULAR, FontStyle.NORMAL, true);
        builder.useFont(() -> new ByteArrayInputStream(bold), FAMILY, BOLD, FontStyle.NORMAL, true);
        builder.withProducer("Tunica");
        try (PdfBoxRenderer renderer = builder.buildPdfRenderer();
                ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            renderer.createPDFWithoutClosing();
            PDDocument pdf = renderer.getPdfDocument();
            timeless(pdf);
            pdf.save(out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The same document gives the same bytes whenever it is printed. */
    private static void timeless(PDDocument pdf) {
        pdf.getDocumentInformation().getCOSObject().removeItem(COSName.CREATION_DATE);
        pdf.getDocumentInformation().getCOSObject().removeItem(COSName.MOD_DATE);
        pdf.setDocumentId(FIXED_ID);
    }
}
