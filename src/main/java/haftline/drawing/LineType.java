package haftline.drawing;

import java.util.List;

/**
 * Line types after ISO 128-20 (numbers in the comments; lengths in multiples of the line's width
 * after ISO 128-20 and ISO 13567, from memory).
 */
public enum LineType {
    /** 01: continuous. */
    CONTINUOUS(List.of()),
    /** 02: dashed, for hidden edges. */
    DASHED(List.of(12.0, 3.0)),
    /** 04: long dash and dot, for centre lines and axes. */
    CENTRE(List.of(24.0, 3.0, 0.5, 3.0)),
    /** 05: long dash and two dots, for the outlines of adjacent parts. */
    ADJACENT(List.of(24.0, 3.0, 0.5, 3.0, 0.5, 3.0));

    private final List<Double> widths;

    LineType(List<Double> widths) {
        this.widths = widths;
    }

    /**
     * The pattern at a line width.
     *
     * @param widthMm width of the line in mm
     * @return lengths in mm, dash and gap in turn; empty for a continuous line
     */
    public List<Double> patternMm(double widthMm) {
        return widths.stream().map(width -> width * widthMm).toList();
    }
}
