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

    /**
     * A shape as the text of a document.
     *
     * @param shape the shape
     * @return YAML that is read back as the same shape
     */
    public static String text(Shape shape) {
        return TreeWriter.write(ShapeWriter.tree(shape), OldText.none());
    }

    /**
     * Saves a shape, keeping the comments of the file that is there.
     *
     * @param file the file
     * @param shape the shape
     * @throws SaveException where it cannot be written; the old file is then as it was
     */
    public static void save(Path file, Shape shape) throws SaveException {
        Document.save(file, ShapeWriter.tree(shape), Document.old(file));
    }
}
