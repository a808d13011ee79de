package haftline.ui.app;

import haftline.measure.Units;
import haftline.shape.Detail;
import java.nio.file.Path;

/** What can be done from menus, buttons and keys. */
interface Actions {
    void showBoard();

    void showLineUp();

    void showSheet();

    void showTemplates();

    void showBatch();

    void showProduction();

    void showExport();

    /** The export's page for templates alone. */
    void exportTemplates();

    /** Prints the paper of the piece at hand. */
    void print();

    void units(Units units);

    void dark(boolean dark);

    boolean isDark();

    void open();

    void open(Path set);

    void begin();

    void save();

    void saveAs();

    void close();

    void nextPiece(int by);

    void rename();

    void renameSet();

    void fit();

    void zoom(boolean in);

    void showGuide();

    void addNode();

    void addDetail(Detail detail);

    void askSlope();

    void turnJoin();

    void removeChosen();

    /** The place where something added from the menu goes, mm from the shoulder. */
    double freePlace();
}
