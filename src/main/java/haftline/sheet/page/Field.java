package haftline.sheet.page;

import haftline.drawing.Drawing;
import haftline.drawing.Element;
import haftline.write.pdf.Orientation;
import haftline.write.pdf.Paper;
import haftline.write.pdf.PdfFile;
import haftline.write.pdf.PdfOptions;
import haftline.write.pdf.PdfWriter;
import java.util.List;

/**
 * The part of an upright paper that a page fills: what margin and check bars leave.
 *
 * @param paper the paper
 */
public record Field(Paper paper) {
    /** Margin and the strip of the check bars, mm: as the PDF writer leaves them. */
    public static final double BORDER_MM = 10;

    /**
     * Width of the field.
     *
     * @return mm
     */
    public double widthMm() {
        return paper.widthMm() - 2 * BORDER_MM;
    }

    /**
     * Height of the field.
     *
     * @return mm
     */
    public double heightMm() {
        return paper.heightMm() - 2 * BORDER_MM;
    }

    /**
     * What is printed round a page: check bars and label.
     *
     * @param title title of the page
     * @return lines and texts, in mm from the paper's lower left corner
     */
    public List<Element> marks(String title) {
        return writer().marks(title);
    }

    private PdfWriter writer() {
        return new PdfWriter(PdfOptions.on(paper).withOrientation(Orientation.PORTRAIT));
    }

    /**
     * Pages of this field as a file to print.
     *
     * @param title title of the document
     * @param pages the pages
     * @return the file
     */
    public PdfFile pdf(String title, List<Drawing> pages) {
        return writer().writePages(title, pages);
    }
}
