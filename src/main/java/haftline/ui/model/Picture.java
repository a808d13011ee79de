package haftline.ui.model;

import java.io.IOException;
import java.nio.file.Path;

/** A picture that was read; its pixels are known to whoever read it. */
public interface Picture {
    /**
     * Where it was read from.
     *
     * @return the file
     */
    Path file();

    /**
     * Width as it is shown.
     *
     * @return pixels
     */
    int width();

    /**
     * Height as it is shown.
     *
     * @return pixels
     */
    int height();

    /**
     * Width in the file, which is more where the picture was reduced.
     *
     * @return pixels
     */
    int fullWidth();

    /**
     * Height in the file.
     *
     * @return pixels
     */
    int fullHeight();

    /** Reads pictures. */
    interface Reader {
        /**
         * Reads a picture, reduced where it is very large; called in the background.
         *
         * @param file a PNG or JPEG file
         * @return the picture
         * @throws IOException whose message is a sentence for the maker
         */
        Picture read(Path file) throws IOException;
    }
}
