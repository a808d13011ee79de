package haftline.write;

import haftline.drawing.Drawing;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * A file that could be made: its name is known, its content is worked out when it is asked for.
 *
 * @param name a plain file name, no folder in it
 * @param drawing the drawing that it shows, worked out on demand; empty for a file that is no
 *     drawing
 * @param content the bytes, worked out on demand; none where it turns out that it cannot be made
 */
public record PlannedFile(
        String name, Optional<Supplier<Drawing>> drawing, Supplier<Optional<byte[]>> content) {
    /**
     * A file that shows a drawing.
     *
     * @param name a plain file name
     * @param drawing the drawing
     * @param content the bytes
     * @return the file
     */
    public static PlannedFile of(String name, Supplier<Drawing> drawing, Supplier<byte[]> content) {
        return new PlannedFile(name, Optional.of(drawing), () -> Optional.of(content.get()));
    }

    /**
     * A file that is no drawing.
     *
     * @param name a plain file name
     * @param content the bytes
     * @return the file
     */
    public static PlannedFile of(String name, Supplier<byte[]> content) {
        return new PlannedFile(name, Optional.empty(), () -> Optional.of(content.get()));
    }

    /**
     * Makes it.
     *
     * @return the file, or empty where it cannot be made
     */
    public Optional<OutputFile> made() {
        return content.get().map(bytes -> new OutputFile(name, bytes));
    }
}
