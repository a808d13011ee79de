package haftline.ui.model;

import haftline.drawing.Drawing;

/** What a file would show. */
public sealed interface ExportPreview {
    /**
     * The file it is of.
     *
     * @return its name, empty where none is chosen
     */
    String name();

    /**
     * Nothing yet: it is being made, or no file is chosen.
     *
     * @param name the file's name, or empty
     */
    record Waiting(String name) implements ExportPreview {}

    /**
     * A drawing.
     *
     * @param name the file's name
     * @param drawing the drawing
     */
    record Drawn(String name, Drawing drawing) implements ExportPreview {}

    /**
     * A picture.
     *
     * @param name the file's name
     * @param png a PNG file
     */
    record Picture(String name, byte[] png) implements ExportPreview {}

    /**
     * A table or other text.
     *
     * @param name the file's name
     * @param text how it begins
     */
    record Words(String name, String text) implements ExportPreview {}

    /**
     * It cannot be shown.
     *
     * @param name the file's name
     * @param why a sentence without a full stop
     */
    record Failed(String name, String why) implements ExportPreview {}
}
