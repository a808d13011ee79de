package haftline.ui.app;

import haftline.ui.model.Question;
import java.nio.file.Path;
import java.util.Optional;

/** Windows that ask the maker something; behind an interface for tests. */
public interface Dialogs {
    /**
     * Which set to open.
     *
     * @param folder where to look first; ignored where it is no folder
     * @return the file, or empty where none was chosen
     */
    Optional<Path> openSet(Path folder);

    /**
     * Where to save a set.
     *
     * @param folder where to look first; ignored where it is no folder
     * @param name name of the file to begin with
     * @return the file, or empty where none was chosen
     */
    Optional<Path> saveSet(Path folder, String name);

    /**
     * Which parts document to open.
     *
     * @param folder where to look first; ignored where it is no folder
     * @return the file, or empty where none was chosen
     */
    Optional<Path> openParts(Path folder);

    /**
     * Where to save a PDF file.
     *
     * @param folder where to look first; ignored where it is no folder
     * @param name name of the file to begin with
     * @return the file, or empty where none was chosen
     */
    Optional<Path> savePdf(Path folder, String name);

    /**
     * Which folder to write into.
     *
     * @param folder where to look first; ignored where it is no folder
     * @return the folder, or empty where none was chosen
     */
    Optional<Path> folder(Path folder);

    /**
     * Which readings of a handle to take a shape off.
     *
     * @param folder where to look first; ignored where it is no folder
     * @return the file, or empty where none was chosen, as a window that cannot ask answers
     */
    default Optional<Path> openReadings(Path folder) {
        return Optional.empty();
    }

    /**
     * Which photograph to lay under the board.
     *
     * @param folder where to look first; ignored where it is no folder
     * @return the file, or empty where none was chosen, as a window that cannot ask answers
     */
    default Optional<Path> openPicture(Path folder) {
        return Optional.empty();
    }

    /**
     * Where to save readings.
     *
     * @param folder where to look first; ignored where it is no folder
     * @param name name of the file to begin with
     * @return the file, or empty where none was chosen, as a window that cannot ask answers
     */
    default Optional<Path> saveReadings(Path folder, String name) {
        return Optional.empty();
    }

    /**
     * Where to save a shape.
     *
     * @param folder where to look first; ignored where it is no folder
     * @param name name of the file to begin with
     * @return the file, or empty where none was chosen, as a window that cannot ask answers
     */
    default Optional<Path> saveShape(Path folder, String name) {
        return Optional.empty();
    }

    /**
     * Puts a question.
     *
     * @param question the question
     * @return one of its answers; where the window is closed without one, the one that changes
     *     nothing
     */
    Question.Answer ask(Question question);

    /**
     * Asks for a name.
     *
     * @param what what is to be named
     * @param name the name now
     * @return the new name, or empty where none was given
     */
    Optional<String> name(String what, String name);
}
