package haftline.write.pdf;

import haftline.drawing.Bounds;
import haftline.drawing.Drawing;
import haftline.drawing.Element;
import haftline.write.lettering.Lettering;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPageContentStream.AppendMode;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/**
 * Writes drawings as PDF sheets at exactly full size, tiled where a sheet is too small. Each sheet
 * has check bars of 100 mm and 4 in both ways; viewers are asked not to scale. docs/formats/pdf.md
 * describes the file.
 *
 * <p>Cubics are written as they are, circles and ellipses as cubics within 0.0001 mm. The bytes
 * depend on the drawings and options alone.
 */
public final class PdfWriter {
    private static final String PRODUCER = "Haftline";

    /** The file's identifier follows from this instead of from the clock. */
    private static final long DOCUMENT_ID = 1;

    /** Half the width of a line that runs along the very edge of the field. */
    private static final double LINE_ROOM_MM = 0.3;

    private final PdfOptions options;

    /**
     * A writer with some options.
     *
     * @param options the options
     */
    public PdfWriter(PdfOptions options) {
        this.options = options;
    }

    /**
     * How many sheets a drawing takes.
     *
     * @param drawing the drawing
     * @return the count
     */
    int sheetsOf(Drawing drawing) {
        return Tiling.of(drawing.bounds(), options).count();
    }

    /**
     * Writes one drawing.
     *
     * @param drawing the drawing
     * @return the file
     */
    public PdfFile write(Drawing drawing) {
        return write(drawing.title(), List.of(drawing));
    }

    /**
     * Writes pages that were laid out for the paper's own field, each on one sheet: x from the
     * field's left edge, y from its foot.
     *
     * @param title title of the document
     * @param pages one or more pages
     * @return the file
     * @throws IllegalArgumentException where there is no page
     */
    public PdfFile writePages(String title, List<Drawing> pages) {
        Sheet sheet = Sheet.of(options, options.orientation() == Orientation.LANDSCAPE);
        Tiling one = new Tiling(sheet, 1, 1, 0, sheet.shownHeightMm(), options.overlapMm());
        return write(title, pages, page -> one);
    }

    /**
     * What stands beside such a page: check bars and label.
     *
     * @param title title of the page
     * @return lines and texts, in mm from the paper's lower left corner
     */
    public List<Element> marks(String title) {
        SheetBars bars =
                new SheetBars(Sheet.of(options, options.orientation() == Orientation.LANDSCAPE));
        List<Element> marks = new ArrayList<>(bars.bars());
        marks.addAll(bars.label(title));
        return List.copyOf(marks);
    }

    /**
     * Writes drawings one after the other, each on sheets of its own.
     *
     * @param title title of the document
     * @param drawings one or more drawings
     * @return the file
     * @throws IllegalArgumentException where there is no drawing
     */
    public PdfFile write(String title, List<Drawing> drawings) {
        return write(title, drawings, drawing -> Tiling.of(drawing.bounds(), options));
    }

    private PdfFile write(String title, List<Drawing> drawings, Function<Drawing, Tiling> tilings) {
        if (drawings.isEmpty()) {
            throw new IllegalArgumentException("PDF: expected at least one drawing");
        }
        try (PDDocument document = new PDDocument();
                InputStream fontFile = Lettering.open()) {
            document.setDocumentId(DOCUMENT_ID);
            PDDocumentInformation information = new PDDocumentInformation();
            information.setTitle(title);
            information.setProducer(PRODUCER);
            document.setDocumentInformation(information);
            PDViewerPreferences preferences = new PDViewerPreferences(new COSDictionary());
            preferences.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
            document.getDocumentCatalog().setViewerPreferences(preferences);
            PDFont font = PDType0Font.load(document, fontFile, true);
            for (Drawing drawing : drawings) {
                sheets(document, font, drawing, tilings.apply(drawing));
            }
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            // Without object streams: a plain file, which old printers and simple checks can read.
            document.save(bytes, CompressParameters.NO_COMPRESSION);
            return new PdfFile(bytes.toByteArray(), document.getNumberOfPages());
        } catch (IOException e) {
            throw new UncheckedIOException("a PDF in memory cannot fail to be written", e);
        }
    }

    private static void sheets(PDDocument document, PDFont font, Drawing drawing, Tiling tiling)
            throws IOException {
        Sheet sheet = tiling.sheet();
        for (int row = 0; row < tiling.rows(); row++) {
            for (int column = 0; column < tiling.columns(); column++) {
                PDPage page =
                        new PDPage(
                                new PDRectangle(units(sheet.widthMm()), units(sheet.heightMm())));
                document.addPage(page);
                try (PDPageContentStream out =
                        new PDPageContentStream(document, page, AppendMode.OVERWRITE, true)) {
                    PageCanvas canvas = new PageCanvas(out, font);
                    SheetMarks marks = new SheetMarks(canvas, tiling);
                    marks.bars();
                    marks.label(drawing.title(), column, row);
                    out.addRect(
                            units(sheet.fieldLeftMm() - LINE_ROOM_MM),
                            units(sheet.fieldBottomMm() - LINE_ROOM_MM),
                            units(sheet.fieldWidthMm() + 2 * LINE_ROOM_MM),
                            units(sheet.fieldHeightMm() + 2 * LINE_ROOM_MM));
                    out.clip();
                    Bounds shown = tiling.shown(column, row);
                    Mapping mapping = mapping(sheet, shown);
                    // Seams lie under the drawing and hide nothing of it.
                    marks.seams(column, row, mapping);
                    draw(canvas, drawing, shown, mapping);
                }
            }
        }
    }

    private static Mapping mapping(Sheet sheet, Bounds shown) {
        return new Mapping(
                sheet.factorX(),
                sheet.factorY(),
                sheet.fieldLeftMm() - sheet.factorX() * shown.minXMm(),
                sheet.fieldBottomMm() - sheet.factorY() * shown.minYMm());
    }

    /** What shows on the sheet, layer by layer as the layers lie upon each other. */
    private static void draw(PageCanvas canvas, Drawing drawing, Bounds shown, Mapping mapping)
            throws IOException {
        List<Element> elements =
                drawing.elements()
                        .filter(element -> touches(element.bounds(), shown))
                        .sorted((a, b) -> a.layer().compareTo(b.layer()))
                        .toList();
        for (Element element : elements) {
            canvas.draw(element, mapping);
        }
    }

    private static boolean touches(Bounds bounds, Bounds shown) {
        Bounds reach = bounds.grown(PageCanvas.LINE_REACH_MM);
        return reach.minXMm() <= shown.maxXMm()
                && reach.maxXMm() >= shown.minXMm()
                && reach.minYMm() <= shown.maxYMm()
                && reach.maxYMm() >= shown.minYMm();
    }

    private static float units(double mm) {
        return (float) (mm * Mapping.UNITS_PER_MM);
    }
}
