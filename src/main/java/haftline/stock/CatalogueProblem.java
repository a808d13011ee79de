package haftline.stock;

/**
 * One thing wrong with a catalogue file.
 *
 * @param file the file as it was named
 * @param line line in the file, from 1; 0 where the file as a whole is meant
 * @param field column, or blank where the line as a whole is meant
 * @param message value and what was expected
 */
public record CatalogueProblem(String file, int line, String field, String message) {
    /** The problem on one line, as those of documents: {@code file:line: field: message}. */
    @Override
    public String toString() {
        return file
                + (line > 0 ? ":" + line : "")
                + (field.isBlank() ? "" : ": " + field)
                + ": "
                + message;
    }
}
