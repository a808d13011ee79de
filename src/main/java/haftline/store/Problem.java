package haftline.store;

/**
 * One thing wrong with a document, and where.
 *
 * @param file the file as it was named
 * @param line line in the file, from 1; 0 where the file as a whole is meant
 * @param column column in that line, from 1; 0 where the whole line or file is meant
 * @param field path of the field, such as {@code pieces[2].kit}, items counted from 1; empty where
 *     none is meant
 * @param message what was found and what is expected
 */
public record Problem(String file, int line, int column, String field, String message) {
    /**
     * The problem on one line: {@code file:line:column: field: message}.
     *
     * @return the line, without a line break
     */
    public String text() {
        StringBuilder text = new StringBuilder(file);
        if (line > 0) {
            text.append(':').append(line);
        }
        if (column > 0) {
            text.append(':').append(column);
        }
        text.append(": ");
        if (!field.isEmpty()) {
            text.append(field).append(": ");
        }
        return text.append(message).toString();
    }
}
