package haftline.write.pdf;

import haftline.drawing.Bounds;

/**
 * How a drawing is spread over sheets: columns from the left, rows from the top, neighbours
 * overlapping, the whole in the middle.
 *
 * @param sheet the sheet
 * @param columns sheets side by side
 * @param rows sheets one above the other
 * @param leftMm the drawing's x at the left edge of the first column's field
 * @param topMm the drawing's y at the top edge of the first row's field
 * @param overlapMm how far two neighbours show the same
 */
record Tiling(Sheet sheet, int columns, int rows, double leftMm, double topMm, double overlapMm) {
    /** Where a drawing fits to this, rounding must not ask for a further sheet. */
    private static final double FIT_MM = 1e-6;

    static Tiling of(Bounds drawing, PdfOptions options) {
        Tiling portrait = of(drawing, Sheet.of(options, false), options.overlapMm());
        if (options.orientation() == Orientation.PORTRAIT) {
            return portrait;
        }
        Tiling landscape = of(drawing, Sheet.of(options, true), options.overlapMm());
        boolean fewer = landscape.count() < portrait.count();
        return fewer || options.orientation() == Orientation.LANDSCAPE ? landscape : portrait;
    }

    private static Tiling of(Bounds drawing, Sheet sheet, double overlapMm) {
        int columns = count(drawing.widthMm(), sheet.shownWidthMm(), overlapMm);
        int rows = count(drawing.heightMm(), sheet.shownHeightMm(), overlapMm);
        double width = columns * sheet.shownWidthMm() - (columns - 1) * overlapMm;
        double height = rows * sheet.shownHeightMm() - (rows - 1) * overlapMm;
        return new Tiling(
                sheet,
                columns,
                rows,
                (drawing.minXMm() + drawing.maxXMm() - width) / 2,
                (drawing.minYMm() + drawing.maxYMm() + height) / 2,
                overlapMm);
    }

    private static int count(double length, double shown, double overlap) {
        return length <= shown + FIT_MM
                ? 1
                : (int) Math.ceil((length - overlap - FIT_MM) / (shown - overlap));
    }

    int count() {
        return columns * rows;
    }

    /** What of the drawing a sheet shows. */
    Bounds shown(int column, int row) {
        double left = leftMm + column * (sheet.shownWidthMm() - overlapMm);
        double top = topMm - row * (sheet.shownHeightMm() - overlapMm);
        return new Bounds(left, top - sheet.shownHeightMm(), left + sheet.shownWidthMm(), top);
    }

    /** x of the line on which two columns are joined, the middle of their overlap. */
    double seamX(int leftColumn) {
        return shown(leftColumn, 0).maxXMm() - overlapMm / 2;
    }

    /** y of the line on which two rows are joined. */
    double seamY(int upperRow) {
        return shown(0, upperRow).minYMm() + overlapMm / 2;
    }

    /** Number of a sheet, from 1, row by row. */
    int number(int column, int row) {
        return row * columns + column + 1;
    }
}
