package haftline.write;

import java.nio.charset.StandardCharsets;

/**
 * A file to be written: its name within the output folder and what it holds.
 *
 * @param name a plain file name, no folder in it
 * @param content the bytes
 */
public record OutputFile(String name, byte[] content) {
    /**
     * Copies the bytes and checks the name.
     *
     * @throws IllegalArgumentException where the name is blank, is a dot or two, or names a folder
     */
    public OutputFile {
        if (name == null
                || name.isBlank()
                || name.equals(".")
                || name.equals("..")
                || name.chars().anyMatch(c -> c == '/' || c == '\\' || Character.isISOControl(c))) {
            throw new IllegalArgumentException(
                    "file name \"" + name + "\": expected a plain name without a folder");
        }
        content = content.clone();
    }

    /**
     * A text file.
     *
     * @param name a plain file name
     * @param text what it says, stored as UTF-8
     * @return the file
     */
    public static OutputFile text(String name, String text) {
        return new OutputFile(name, text.getBytes(StandardCharsets.UTF_8));
    }

    @Override
    public byte[] content() {
        return content.clone();
    }
}
