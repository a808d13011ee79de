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
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder(file);
        if (line > 0) {
            text.append(", line ").append(line);
        }
        if (!field.isBlank()) {
            text.append(", ").append(field);
        }
        return text.append(": ").append(message).toString();
    }
}
