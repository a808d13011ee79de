package haftline.drawing;

/** One thing on a drawing, on one layer. */
public sealed interface Element permits Path, Circle, Arrowhead, Text {
    /**
     * The layer it lies on.
     *
     * @return the layer
     */
    Layer layer();

    /**
     * The least rectangle that holds it, line widths left out; exact but for text, whose width
     * depends on the reader's font and is estimated.
     *
     * @return the rectangle
     */
    Bounds bounds();
}
