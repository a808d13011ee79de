package haftline.ui.app;

import haftline.ui.batch.BatchPane;
import haftline.ui.export.ExportPane;
import haftline.ui.model.BatchModel;
import haftline.ui.model.EditorModel;
import haftline.ui.model.Latest;
import haftline.ui.model.PaperModel;
import haftline.ui.model.ProductionModel;
import haftline.ui.model.Watched;
import haftline.ui.production.ProductionPane;
import haftline.ui.sheet.SheetPane;
import haftline.ui.theme.Palette;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.scene.Node;

/** The views of what is on paper: sheets, a new batch of parts, production. */
final class PaperViews {
    private final SheetPane sheet;
    private final BatchPane batch;
    private final ProductionPane production;

    /**
     * The views; none is shown.
     *
     * @param editor what all views share
     * @param palette colours of the theme
     * @param dialogs how questions are put
     * @param folder the set's folder
     */
    PaperViews(
            EditorModel editor, Watched<Palette> palette, Dialogs dialogs, Supplier<Path> folder) {
        Executor background = ExportPane.background();
        Supplier<Latest> latest = () -> new Latest(background, Platform::runLater);
        sheet =
                new SheetPane(
                        editor,
                        new PaperModel(editor, latest.get(), latest.get()),
                        name -> dialogs.savePdf(folder.get(), name));
        batch =
                new BatchPane(
                        editor,
                        new BatchModel(editor, latest.get()),
                        palette,
                        () -> dialogs.openParts(folder.get()),
                        name -> dialogs.name("batch", name));
        production =
                new ProductionPane(
                        editor,
                        new ProductionModel(editor, latest.get(), latest.get()),
                        palette,
                        dialogs::folder);
        show(Workbench.Showing.BOARD);
    }

    void addTo(List<Node> middle, int at) {
        middle.addAll(at, List.of(sheet, batch, production));
    }

    void show(Workbench.Showing showing) {
        sheet.setVisible(showing == Workbench.Showing.SHEET);
        batch.setVisible(showing == Workbench.Showing.BATCH);
        production.setVisible(showing == Workbench.Showing.PRODUCTION);
    }

    void print() {
        sheet.print();
    }
}
