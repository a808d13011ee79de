package haftline.ui;

import haftline.cli.Window;
import java.nio.file.Path;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;

/** The editor as the command line finds it. */
public final class EditorWindow implements Window {
    /**
     * The toolkit warns of being run off one jar, which is how the program comes and tells its user
     * nothing. Held here, for a logger that nobody holds forgets its level.
     */
    private static final Logger TOOLKIT = Logger.getLogger("javafx");

    /** Made by the service loader; nothing of the toolkit is loaded yet. */
    public EditorWindow() {}

    @Override
    public void open(Optional<Path> set) {
        TOOLKIT.setLevel(Level.SEVERE);
        Editor.main(set.map(path -> new String[] {path.toString()}).orElse(new String[0]));
    }
}
