package haftline.write.pdf;

import haftline.measure.Checks;
import haftline.set.FileSettings;

/**
 * How a drawing becomes printed sheets.
 *
 * @param paper the paper
 * @param orientation which way it lies
 * @param marginMm strip along every edge that the printer cannot print on, 3 to 30
 * @param overlapMm how far two neighbouring sheets show the same, 6 to 40: room for glue and for
 *     the register marks
 * @param correction what makes up for a printer that is off
 */
public record PdfOptions(
        Paper paper,
        Orientation orientation,
        double marginMm,
        double overlapMm,
        PrinterCorrection correction) {
    /** Home printers leave 3 to 5 mm bare (common practice, no source). */
    private static final double USUAL_MARGIN_MM = 5;

    private static final double USUAL_OVERLAP_MM = 12;

    /**
     * Checks the ranges.
     *
     * @throws IllegalArgumentException where a value is out of range
     */
    public PdfOptions {
        Checks.within("margin", marginMm, 3, 30);
        Checks.within("overlap", overlapMm, 6, 40);
    }

    /**
     * A margin of 5 mm and an overlap of 12 mm, whichever way needs fewer sheets, no correction.
     *
     * @param paper the paper
     * @return the options
     */
    public static PdfOptions on(Paper paper) {
        return new PdfOptions(
                paper,
                Orientation.FEWEST_SHEETS,
                USUAL_MARGIN_MM,
                USUAL_OVERLAP_MM,
                PrinterCorrection.NONE);
    }

    /**
     * The paper and the correction of a workshop, else as {@link #on}.
     *
     * @param files the maker's settings
     * @return the options
     */
    public static PdfOptions of(FileSettings files) {
        Paper paper =
                switch (files.paper()) {
                    case A4 -> Paper.A4;
                    case A3 -> Paper.A3;
                    case LETTER -> Paper.LETTER;
                };
        FileSettings.Printer printer = files.printer();
        return on(paper)
                .withCorrection(
                        PrinterCorrection.measured(
                                printer.shortEdgeBarMm(), printer.longEdgeBarMm()));
    }

    /**
     * The same, lying another way.
     *
     * @param other which way
     * @return the options
     */
    public PdfOptions withOrientation(Orientation other) {
        return new PdfOptions(paper, other, marginMm, overlapMm, correction);
    }

    /**
     * The same with another margin.
     *
     * @param mm the margin, 3 to 30
     * @return the options
     */
    PdfOptions withMargin(double mm) {
        return new PdfOptions(paper, orientation, mm, overlapMm, correction);
    }

    /**
     * The same with another overlap.
     *
     * @param mm the overlap, 6 to 40
     * @return the options
     */
    PdfOptions withOverlap(double mm) {
        return new PdfOptions(paper, orientation, marginMm, mm, correction);
    }

    /**
     * The same for a printer that is off.
     *
     * @param other the correction
     * @return the options
     */
    public PdfOptions withCorrection(PrinterCorrection other) {
        return new PdfOptions(paper, orientation, marginMm, overlapMm, other);
    }
}
