package haftline.ui.photo;

import haftline.ui.model.Picture;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.Locale;
import javafx.scene.image.Image;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;

/** Reads PNG and JPEG files, very large ones at a reduced size. */
public final class PictureReader implements Picture.Reader {
    /**
     * Longest side as it is shown, px: a handle of 150 mm across it has pixels of 0.05 mm, finer
     * than a photograph is sharp.
     */
    static final int LONGEST_PX = 3000;

    /** More than this wants more memory than a drawing program should take, pixels. */
    static final long MOST_PX = 100_000_000;

    /** A picture and its pixels. */
    record Read(Path file, Image image, int width, int height, int fullWidth, int fullHeight)
            implements Picture {}

    private record Size(int width, int height) {}

    /**
     * Whether a file is taken for a picture, by its name.
     *
     * @param file the file
     * @return true for names that end as PNG and JPEG files do
     */
    public static boolean isPicture(Path file) {
        String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
        return name.matches(".*\\.(png|jpe?g)");
    }

    @Override
    public Picture read(Path file) throws IOException {
        Size full = size(file);
        if ((long) full.width() * full.height() > MOST_PX) {
            throw new IOException(
                    file.getFileName()
                            + " is "
                            + full.width()
                            + " × "
                            + full.height()
                            + " pixels, more than "
                            + MOST_PX / 1_000_000
                            + " million. Make it smaller first");
        }
        boolean isLarge = Math.max(full.width(), full.height()) > LONGEST_PX;
        double side = isLarge ? LONGEST_PX : 0;
        Image image = new Image(file.toUri().toString(), side, side, true, true);
        if (image.isError() || image.getWidth() < 1) {
            throw unreadable(file);
        }
        return new Read(
                file,
                image,
                (int) Math.round(image.getWidth()),
                (int) Math.round(image.getHeight()),
                full.width(),
                full.height());
    }

    /** Its size by its head alone. */
    private static Size size(Path file) throws IOException {
        if (!Files.isReadable(file) || Files.isDirectory(file)) {
            throw new IOException(file.getFileName() + " cannot be opened");
        }
        try (ImageInputStream in = ImageIO.createImageInputStream(file.toFile())) {
            Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
            if (!readers.hasNext()) {
                throw unreadable(file);
            }
            ImageReader reader = readers.next();
            try {
                String format = reader.getFormatName().toLowerCase(Locale.ROOT);
                if (!format.matches("png|jpe?g")) {
                    throw unreadable(file);
                }
                reader.setInput(in, true, true);
                return new Size(reader.getWidth(0), reader.getHeight(0));
            } finally {
                reader.dispose();
            }
        } catch (FileNotFoundException | NoSuchFileException gone) {
            throw new IOException(file.getFileName() + " cannot be opened", gone);
        } catch (javax.imageio.IIOException broken) {
            throw unreadable(file);
        }
    }

    private static IOException unreadable(Path file) {
        return new IOException(
                file.getFileName() + " cannot be read as a picture: expected PNG or JPEG");
    }
}
