package haftline.ui;

import haftline.cli.Window;
import java.nio.file.Path;
import java.util.Optional;

/** The editor as the command line finds it. */
public final class EditorWindow implements Window {
    /** Made by the service loader; nothing of the toolkit is loaded yet. */
    public EditorWindow() {}

    @Override
    public void open(Optional<Path> set) {
        Editor.main(set.map(path -> new String[] {path.toString()}).orElse(new String[0]));
    }
}
