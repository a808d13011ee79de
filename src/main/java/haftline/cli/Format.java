package haftline.cli;

import java.util.Locale;

/** A kind of file that {@code make} writes. */
enum Format {
    /** Drawings for the eye, for printing and for laser cutters. */
    SVG,
    /** Drawings for drawing and cutting programs. */
    DXF,
    /** Drawings to print at full size. */
    PDF,
    /** The finished wood as a solid, for whoever works with one. */
    STL,
    /** The calliper table. */
    CSV,
    /** Pictures of the finished pieces and of the set. */
    PNG,
    /** Papers to read on a screen. */
    HTML,
    /** Plain text to paste elsewhere. */
    TXT;

    /** As it is typed after {@code --only} and as its files end. */
    String id() {
        return name().toLowerCase(Locale.ROOT);
    }
}
