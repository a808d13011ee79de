package haftline.ui.app;

import haftline.measure.Units;
import java.nio.file.Path;

/** What can be done from menus, buttons and keys. */
interface Actions {
    void showBoard();

    void showLineUp();

    void units(Units units);

    void dark(boolean dark);

    boolean isDark();

    void open();

    void open(Path set);

    void close();

    void nextPiece(int by);

    void fit();

    void zoom(boolean in);

    void showGuide();
}
