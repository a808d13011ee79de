package haftline.store;

import haftline.shape.Shape;
import java.nio.file.Path;
import java.util.Optional;

/** Shape documents on the disk. */
public final class ShapeFile {
    private ShapeFile() {}

    /**
     * Reads a shape document.
     *
     * @param file the file
     * @return what it says
     * @throws DocumentException where it cannot be read or anything is wrong with it
     */
    public static Shape read(Path file) throws DocumentException {
        Problems problems = new Problems(file.toString());
        Optional<Shape> read = read(file, problems);
        problems.refuseIfAny();
        return read.orElseThrow();
    }

    static Optional<Shape> read(Path file, Problems problems) {
        return Document.open(file, ShapeKeys.KIND, ShapeKeys.SHAPE, problems)
                .flatMap(ShapeReader::read);
    }
}
