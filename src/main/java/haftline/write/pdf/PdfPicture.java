package haftline.write.pdf;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;

/** A page of a PDF file as a picture, for the eye. */
public final class PdfPicture {
    /** Fine enough for small letters on a screen. */
    private static final float DOTS_PER_INCH = 160;

    private PdfPicture() {}

    /**
     * Draws the first page.
     *
     * @param pdf a PDF file that this program wrote
     * @return a PNG file
     */
    public static byte[] firstPage(byte[] pdf) {
        try (PDDocument document = Loader.loadPDF(pdf);
                ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            ImageIO.write(
                    new PDFRenderer(document).renderImageWithDPI(0, DOTS_PER_INCH), "png", out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
