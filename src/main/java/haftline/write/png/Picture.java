package haftline.write.png;

/**
 * A PNG file and its scale.
 *
 * @param content the bytes
 * @param widthPx dots across
 * @param heightPx dots down
 * @param dotsPerMm dots for each millimetre of the pieces, in both directions; the file says so
 *     too, so that a print at the file's own size is at full size
 */
public record Picture(byte[] content, int widthPx, int heightPx, double dotsPerMm) {
    /** Copies the bytes. */
    public Picture {
        content = content.clone();
    }

    @Override
    public byte[] content() {
        return content.clone();
    }
}
