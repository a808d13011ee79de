package haftline.drawing;

import haftline.measure.LengthText;
import haftline.measure.Units;
import haftline.set.FileSettings.Paper;
import java.util.List;
import java.util.stream.Stream;

/**
 * What a drawing is set on: the paper that it is printed on, and the unit of the lengths that are
 * written in it. What is drawn is in mm whatever they are.
 *
 * @param paper the paper at hand
 * @param units unit of what is written
 */
public record SheetFormat(Paper paper, Units units) {
    /** A4, lengths in mm. */
    public static final SheetFormat STANDARD = new SheetFormat(Paper.A4, Units.MM);

    /** Between the paper's edge and the frame, mm: room for what the printer's sheet carries. */
    static final double MARGIN_MM = 10;

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
        private static Frame of(Paper paper) {
            return new Frame(
                    paper,
                    Math.floor(paper.longEdgeMm() - 2 * MARGIN_MM),
                    Math.floor(paper.shortEdgeMm() - 2 * MARGIN_MM));
        }
    }

    /**
     * The frames to choose from, the smallest first: what is too large for A4 goes on A3, beside
     * Letter there is no larger paper that {@link Paper} knows.
     */
    List<Frame> frames() {
        Stream<Paper> papers =
                paper == Paper.LETTER ? Stream.of(paper) : Stream.of(Paper.A4, Paper.A3);
        return papers.map(Frame::of).toList();
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
