package haftline.ui.app;

import haftline.ui.batch.BatchPane;
import haftline.ui.export.ExportPane;
import haftline.ui.lineup.LineUpPane;
import haftline.ui.model.BatchModel;
import haftline.ui.model.EditorModel;
import haftline.ui.model.ExportModel;
import haftline.ui.model.FamilyModel;
import haftline.ui.model.Latest;
import haftline.ui.model.PaperModel;
import haftline.ui.model.Preferences;
import haftline.ui.model.ProductionModel;
import haftline.ui.model.Watched;
import haftline.ui.production.ProductionPane;
import haftline.ui.sheet.SheetPane;
import haftline.ui.templates.TemplatesPane;
import haftline.ui.theme.Palette;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.layout.StackPane;

/**
 * The pages that lie over the board, one at a time. A page is made when it is first shown, and only
 * the one that is shown is in the window: hidden ones would be walked through with every frame, and
 * styled before the first.
 */
final class Pages {
    private final EditorModel editor;
    private final Preferences preferences;
    private final Watched<Palette> palette;
    private final Dialogs dialogs;
    private final Supplier<Path> folder;
    private final StackPane middle;
    private final Node under;
    private final Late<Executor> background = new Late<>(ExportPane::background);
    private final Late<ExportModel> exporting = new Late<>(this::exportModel);
    private final Late<SheetPane> sheet = new Late<>(this::sheet);
    private final Late<ProductionPane> production = new Late<>(this::production);
    private final Late<TemplatesPane> templates;
    private final Map<Showing, Late<? extends Node>> pages = new EnumMap<>(Showing.class);

    /**
     * The pages; none is shown.
     *
     * @param editor what all views share
     * @param preferences what is remembered
     * @param palette colours of the theme
     * @param dialogs how questions are put
     * @param folder the set's folder
     * @param opener opens a folder on the desktop
     * @param actions what can be done
     * @param middle where the pages lie
     * @param under what they lie upon, one of {@code middle}
     */
    Pages(
            EditorModel editor,
            Preferences preferences,
            Watched<Palette> palette,
            Dialogs dialogs,
            Supplier<Path> folder,
            Consumer<Path> opener,
            Actions actions,
            StackPane middle,
            Node under) {
        this.editor = editor;
        this.preferences = preferences;
        this.palette = palette;
        this.dialogs = dialogs;
        this.folder = folder;
        this.middle = middle;
        this.under = under;
        templates =
                new Late<>(
                        () ->
                                new TemplatesPane(
                                        editor, preferences, palette, actions::exportTemplates));
        pages.put(Showing.LINE_UP, new Late<>(() -> lineUp(actions)));
        pages.put(Showing.SHEET, sheet);
        pages.put(Showing.TEMPLATES, templates);
        pages.put(Showing.BATCH, new Late<>(this::batch));
        pages.put(Showing.PRODUCTION, production);
        pages.put(Showing.EXPORT, new Late<>(() -> export(opener, actions)));
    }

    /** Adds a page that somebody else makes. */
    void add(Showing showing, Late<? extends Node> page) {
        pages.put(showing, page);
    }

    private Latest latest() {
        return new Latest(background.get(), Platform::runLater);
    }

    private LineUpPane lineUp(Actions actions) {
        return new LineUpPane(
                editor,
                palette,
                new FamilyModel(editor, background.get(), Platform::runLater),
                actions::showBoard);
    }

    private SheetPane sheet() {
        return new SheetPane(
                editor,
                new PaperModel(editor, latest(), latest()),
                name -> dialogs.savePdf(folder.get(), name));
    }

    private BatchPane batch() {
        return new BatchPane(
                editor,
                new BatchModel(editor, latest()),
                palette,
                () -> dialogs.openParts(folder.get()),
                name -> dialogs.name("batch", name));
    }

    private ProductionPane production() {
        return new ProductionPane(
                editor,
                preferences,
                new ProductionModel(editor, latest(), latest()),
                palette,
                dialogs::folder);
    }

    private ExportModel exportModel() {
        return new ExportModel(
                editor, preferences, new Maker(), ExportPane.background(), Platform::runLater);
    }

    private ExportPane export(Consumer<Path> opener, Actions actions) {
        ExportPane page =
                new ExportPane(
                        exporting.get(),
                        dialogs::folder,
                        opener,
                        () -> {
                            // Back to where the page was called from.
                            if (exporting.get().templatesAlone().value()) {
                                actions.showTemplates();
                            } else {
                                actions.showBoard();
                            }
                        });
        // The inspector and the unit are at hand beside it: what is written follows them.
        editor.draft().watch(draft -> page.planAgain());
        editor.units().watch(units -> page.planAgain());
        return page;
    }

    /** Shows one page, or the bare board. */
    void show(Showing showing) {
        pages.forEach(
                (which, page) -> {
                    if (which != showing) {
                        page.made().ifPresent(this::hide);
                    }
                });
        Late<? extends Node> wanted = pages.get(showing);
        if (wanted != null) {
            lay(wanted);
        }
    }

    private void hide(Node page) {
        page.setVisible(false);
        middle.getChildren().remove(page);
    }

    private void lay(Late<? extends Node> wanted) {
        if (wanted.made().isEmpty()) {
            // A page gets to work when it comes to be visible.
            wanted.get().setVisible(false);
        }
        Node page = wanted.get();
        page.setVisible(true);
        List<Node> laid = middle.getChildren();
        if (!laid.contains(page)) {
            laid.add(laid.indexOf(under) + 1, page);
        }
    }

    /** The templates' page, while it is shown. */
    Optional<TemplatesPane> templates() {
        return templates.made().filter(Node::isVisible);
    }

    /**
     * What stands at the side of the window for the page that is shown, in the inspector's place.
     */
    Optional<Node> side() {
        return templates()
                .map(TemplatesPane::settings)
                .or(() -> production.made().filter(Node::isVisible).map(ProductionPane::costs));
    }

    /**
     * What is exported next.
     *
     * @param templatesAlone whether nothing else is to be written
     */
    void chooseExport(boolean templatesAlone) {
        exporting.get().choose(templatesAlone);
    }

    void print() {
        sheet.get().print();
    }
}
