package haftline.cli;

import java.util.List;

/** A file of readings that was refused; one line for each thing wrong with it. */
final class ReadingsException extends Exception {
    private static final long serialVersionUID = 1L;

    ReadingsException(List<String> lines) {
        super(String.join("\n", lines));
    }

    ReadingsException(String line) {
        super(line);
    }
}
