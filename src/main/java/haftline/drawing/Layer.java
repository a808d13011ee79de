package haftline.drawing;

/**
 * What a line is for, and with it how it is drawn. The order is the order of drawing: what comes
 * later lies on top.
 *
 * <p>Wide lines are twice the narrow ones (ISO 128: 0.5 and 0.25 mm). Lines that a machine follows
 * are thin, so that the place they mean is plain.
 */
public enum Layer {
    /** Cut faces of a section: continuous narrow lines at 45 degrees. */
    HATCH("hatch", LineType.CONTINUOUS, Layer.HATCH_MM),
    /** Edges that cannot be seen: dashed narrow. */
    HIDDEN("hidden", LineType.DASHED, Layer.NARROW_MM),
    /** Axes and lines of symmetry: long dash and dot, narrow. */
    CENTRE("centre", LineType.CENTRE, Layer.NARROW_MM),
    /**
     * The kit's metal parts beside the wood, drawn for reference: long dash and two dots, narrow.
     */
    PART("part", LineType.ADJACENT, Layer.NARROW_MM),
    /** Edges that can be seen: continuous wide. */
    OUTLINE("outline", LineType.CONTINUOUS, Layer.WIDE_MM),
    /** Dimension and extension lines with their arrowheads and figures: continuous narrow. */
    DIMENSION("dimension", LineType.CONTINUOUS, Layer.NARROW_MM),
    /** Titles and notes; its lines are frames and leaders. */
    TEXT("text", LineType.CONTINUOUS, Layer.NARROW_MM),
    /** Lines that a machine marks but does not cut through. */
    SCORE("score", LineType.CONTINUOUS, Layer.TOOL_PATH_MM),
    /** Lines that a machine cuts through: always closed loops. */
    CUT("cut", LineType.CONTINUOUS, Layer.TOOL_PATH_MM);

    private static final double WIDE_MM = 0.5;
    private static final double NARROW_MM = 0.25;

    /**
     * Next step down in the ISO 128 row of widths: close hatching at the narrow width turns grey.
     */
    private static final double HATCH_MM = 0.18;

    /** Thin enough to mean one place, thick enough to be seen on a screen at full size. */
    private static final double TOOL_PATH_MM = 0.1;

    private final String id;
    private final LineType lineType;
    private final double widthMm;

    Layer(String id, LineType lineType, double widthMm) {
        this.id = id;
        this.lineType = lineType;
        this.widthMm = widthMm;
    }

    /**
     * Name of the layer in files.
     *
     * @return a lower-case ASCII word
     */
    public String id() {
        return id;
    }

    /**
     * Type of its lines.
     *
     * @return the type
     */
    public LineType lineType() {
        return lineType;
    }

    /**
     * Width of its lines.
     *
     * @return mm
     */
    public double widthMm() {
        return widthMm;
    }
}
