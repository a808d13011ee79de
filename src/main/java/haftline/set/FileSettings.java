package haftline.set;

import haftline.measure.Checks;
import haftline.measure.Units;

/**
 * How files are written for the maker's programs and printer.
 *
 * @param dxf what DXF files are for
 * @param hairlines whether cut lines in SVG files are as thin as drivers want that tell cutting
 *     from engraving by the width of a line
 * @param paper what is printed on
 * @param printer what the check bars of a print measure
 */
public record FileSettings(Dxf dxf, boolean hairlines, Paper paper, Printer printer) {
    /** For a cutter of this century, A4, a true printer. */
    public static final FileSettings COMMON_PRACTICE =
            new FileSettings(Dxf.CUTTING, false, Paper.A4, Printer.TRUE);

    /** What a DXF file is for. */
    public enum Dxf {
        /** Laser cutters and routers: lines and arcs. */
        CUTTING,
        /** Drawing programs: true curves. */
        DRAWING,
        /** Controllers that refuse everything newer than the oldest form. */
        OLD_CONTROLLER
    }

    /** Paper that home printers take. */
    public enum Paper {
        /** 210 by 297 mm (ISO 216). */
        A4("A4", 210, 297),
        /** 297 by 420 mm (ISO 216). */
        A3("A3", 297, 420),
        /** 8 1/2 by 11 in (ANSI/ASME Y14.1, size A). */
        LETTER("Letter", 8.5 * Units.INCH.millimetres(), 11 * Units.INCH.millimetres());

        private final String label;
        private final double shortEdgeMm;
        private final double longEdgeMm;

        Paper(String label, double shortEdgeMm, double longEdgeMm) {
            this.label = label;
            this.shortEdgeMm = shortEdgeMm;
            this.longEdgeMm = longEdgeMm;
        }

        /**
         * Its shorter edge.
         *
         * @return mm
         */
        public double shortEdgeMm() {
            return shortEdgeMm;
        }

        /**
         * Its longer edge.
         *
         * @return mm
         */
        public double longEdgeMm() {
            return longEdgeMm;
        }

        /**
         * What it is called.
         *
         * @return such as {@code A4}
         */
        public String label() {
            return label;
        }
    }

    /**
     * What the 100 mm check bars measure on a print that was not corrected. The edges are the
     * paper's own: a printer feeds paper always the same way, however the drawing lies on it.
     *
     * @param shortEdgeBarMm the bar along the paper's short edge, mm, 95.3 to 105
     * @param longEdgeBarMm the bar along its long edge, mm, 95.3 to 105
     */
    public record Printer(double shortEdgeBarMm, double longEdgeBarMm) {
        /** A printer that needs no correction. */
        public static final Printer TRUE = new Printer(100, 100);

        /**
         * A bar off by more was scaled on purpose, and the cure is the printer's settings (common
         * practice, no source).
         */
        public static final double LEAST_BAR_MM = 95.3;

        /** See {@link #LEAST_BAR_MM}. */
        public static final double GREATEST_BAR_MM = 105;

        /** Checks the ranges. */
        public Printer {
            Checks.withinMm(
                    "bar along the short edge", shortEdgeBarMm, LEAST_BAR_MM, GREATEST_BAR_MM);
            Checks.withinMm(
                    "bar along the long edge", longEdgeBarMm, LEAST_BAR_MM, GREATEST_BAR_MM);
        }
    }

    /**
     * The same for another purpose of DXF files.
     *
     * @param other what DXF files are for
     * @return the changed copy
     */
    public FileSettings withDxf(Dxf other) {
        return new FileSettings(other, hairlines, paper, printer);
    }

    /**
     * The same on other paper.
     *
     * @param other what is printed on
     * @return the changed copy
     */
    public FileSettings withPaper(Paper other) {
        return new FileSettings(dxf, hairlines, other, printer);
    }

    /**
     * The same for another printer.
     *
     * @param other what the check bars of a print measure
     * @return the changed copy
     */
    public FileSettings withPrinter(Printer other) {
        return new FileSettings(dxf, hairlines, paper, other);
    }
}
