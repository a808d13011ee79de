package haftline.drawing;

import haftline.measure.LengthText;
import haftline.measure.Units;
import haftline.set.FileSettings.Paper;
import haftline.set.FileSettings.Printer;
import java.util.List;
import java.util.stream.Stream;

/**
 * What a drawing is set on: the paper that it is printed on, and the unit of the lengths that are
 * written in it. What is drawn is in mm whatever they are.
 *
 * @param paper the paper at hand
 * @param printer what it prints of the 100 mm bars: where that is short, a corrected print wants
 *     more of the paper
 * @param units unit of what is written
 */
public record SheetFormat(Paper paper, Printer printer, Units units) {
    /** A4, a true printer, lengths in mm. */
    public static final SheetFormat STANDARD = new SheetFormat(Paper.A4, Printer.TRUE, Units.MM);

    /** Between the paper's edge and the frame, mm: room for what the printer's sheet carries. */
    static final double MARGIN_MM = 10;

    /** What {@link Printer} measures is of so many mm. */
    private static final double TRUE_BAR_MM = 100;

    /** What stands under a small drawing, to be measured on its print. */
    private static final double BAR_MM = 50;

    private static final double BAR_INCHES = 2;

    /**
     * The frame of a paper on its side, in whole mm.
     *
     * @param paper the paper
     * @param widthMm level side
     * @param heightMm upright side
     */
    record Frame(Paper paper, double widthMm, double heightMm) {
        private static Frame of(Paper paper, Printer printer) {
            return new Frame(
                    paper,
                    side(paper.longEdgeMm(), printer.longEdgeBarMm()),
                    side(paper.shortEdgeMm(), printer.shortEdgeBarMm()));
        }

        private static double side(double edgeMm, double barMm) {
            return Math.floor((edgeMm - 2 * MARGIN_MM) * Math.min(1, barMm / TRUE_BAR_MM));
        }
    }

    /**
     * The frames to choose from, the smallest first: what is too large for A4 goes on A3, beside
     * Letter there is no larger paper that {@link Paper} knows.
     */
    List<Frame> frames() {
        Stream<Paper> papers =
                paper == Paper.LETTER ? Stream.of(paper) : Stream.of(Paper.A4, Paper.A3);
        return papers.map(sheet -> Frame.of(sheet, printer)).toList();
    }

    /** Lengths as they are written. */
    LengthText lengths() {
        return new LengthText(units);
    }

    /** The bar that stands under a drawing: a round length of the unit. */
    Group checkBar(Vertex topLeft) {
        return CheckBar.of(topLeft, units == Units.MM ? BAR_MM : BAR_INCHES, units);
    }
}
