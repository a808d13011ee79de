package haftline.write.pdf;

/**
 * A PDF file and how it came out.
 *
 * @param content the bytes
 * @param sheets how many sheets it has
 */
public record PdfFile(byte[] content, int sheets) {
    /** Copies the bytes. */
    public PdfFile {
        content = content.clone();
    }

    @Override
    public byte[] content() {
        return content.clone();
    }
}
