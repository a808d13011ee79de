package haftline.ui;

import haftline.ui.app.EditorApplication;
import javafx.application.Application;

/** Entry point of the editor; no Application itself, so that a plain class path will do. */
public final class Editor {
    private Editor() {}

    /**
     * Opens the editor's window and returns when it is closed.
     *
     * @param args the set's file
     */
    public static void main(String[] args) {
        EditorApplication.prepare();
        Application.launch(EditorApplication.class, args);
    }
}
