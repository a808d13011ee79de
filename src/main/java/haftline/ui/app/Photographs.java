package haftline.ui.app;

import haftline.adjust.takeoff.PictureExactness;
import haftline.ui.board.BoardPane;
import haftline.ui.model.EditorModel;
import haftline.ui.model.PhotoHand.Tool;
import haftline.ui.model.PhotoModel;
import haftline.ui.model.PhotoState;
import haftline.ui.model.Picture;
import haftline.ui.model.TakeOffModel;
import haftline.ui.model.Viewpoint;
import haftline.ui.model.Watched;
import haftline.ui.photo.PhotoBoard;
import haftline.ui.photo.PhotoPanel;
import haftline.ui.photo.PictureReader;
import haftline.ui.theme.Palette;
import java.nio.file.Path;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.scene.control.CheckMenuItem;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;
import javafx.scene.input.KeyCode;

/** A photograph under the board: its menu, its column, and the way to the take-off. */
final class Photographs implements PhotoPanel.Doings {
    private final Actions actions;
    private final EditorModel editor;
    private final Dialogs dialogs;
    private final Supplier<Path> folder;
    private final TakeOffModel takeOff;
    private final Runnable showTakeOff;
    private final PhotoModel model;
    private final Late<PhotoPanel> panel;
    private final CheckMenuItem shown = new CheckMenuItem("Sho_w it");
    private PhotoBoard board;
    private Viewpoint viewpoint;
    private boolean isOpen;

    /**
     * @param actions what else can be done
     * @param editor what all views share
     * @param dialogs how files are asked for
     * @param folder where to look for files first
     * @param background where pictures are read
     * @param takeOff what takes a shape off readings
     * @param showTakeOff brings the take-off's page up
     */
    Photographs(
            Actions actions,
            EditorModel editor,
            Dialogs dialogs,
            Supplier<Path> folder,
            Executor background,
            TakeOffModel takeOff,
            Runnable showTakeOff) {
        this.actions = actions;
        this.editor = editor;
        this.dialogs = dialogs;
        this.folder = folder;
        this.takeOff = takeOff;
        this.showTakeOff = showTakeOff;
        model = new PhotoModel(editor, new PictureReader(), background, Platform::runLater);
        panel = new Late<>(() -> new PhotoPanel(editor, model, this));
        model.state().watch(this::askApart);
        model.isReading()
                .watch(
                        isReading -> {
                            if (!isReading && isOpen) {
                                Platform.runLater(() -> board.focusTool());
                            }
                        });
    }

    /** Once all points are set, the distance is what is to be typed. */
    private void askApart(PhotoState state) {
        boolean areSet = state.marks().keySet().containsAll(state.wanted());
        if (isOpen && areSet && state.apartMm().isEmpty()) {
            Platform.runLater(panel.get()::focusApart);
        }
    }

    PhotoModel model() {
        return model;
    }

    /** The board with what belongs to a photograph about it. */
    PhotoBoard about(BoardPane bare, Viewpoint where, Watched<Palette> palette) {
        viewpoint = where;
        board = new PhotoBoard(editor, model, bare, viewpoint, palette);
        return board;
    }

    /** Where board and photograph stand on the screen. */
    Viewpoint viewpoint() {
        return viewpoint;
    }

    boolean isOpen() {
        return isOpen;
    }

    PhotoPanel panel() {
        return panel.get();
    }

    Menu menu() {
        Menu menu = new Menu("_Photograph under the board");
        shown.setAccelerator(MenuLine.shiftKey(KeyCode.H));
        shown.setOnAction(e -> model.isShown().set(shown.isSelected()));
        model.isShown().follow(shown::setSelected);
        MenuItem remove =
                MenuLine.of("_Remove it", model::remove, MenuLine.shiftKey(KeyCode.BACK_SPACE));
        model.state()
                .follow(
                        state -> {
                            shown.setDisable(state.picture().isEmpty());
                            remove.setDisable(state.picture().isEmpty());
                        });
        menu.getItems()
                .addAll(
                        MenuLine.of("_Choose…", this::choose, MenuLine.shiftKey(KeyCode.P)),
                        MenuLine.of(
                                "Set its _points",
                                () -> use(Tool.POINTS),
                                MenuLine.shiftKey(KeyCode.G)),
                        MenuLine.of(
                                "_Trace the outline",
                                () -> use(Tool.TRACE),
                                MenuLine.key(KeyCode.G)),
                        new SeparatorMenuItem(),
                        shown,
                        remove);
        return menu;
    }

    @Override
    public void choose() {
        Path first =
                model.state()
                        .value()
                        .picture()
                        .map(Picture::file)
                        .map(Path::getParent)
                        .orElseGet(folder);
        dialogs.openPicture(first).ifPresentOrElse(this::open, this::show);
    }

    /** Puts a picture under the board and asks for its points. */
    void open(Path picture) {
        show();
        model.open(picture);
    }

    private void use(Tool tool) {
        if (model.state().value().picture().isEmpty()) {
            choose();
            return;
        }
        show();
        model.isShown().set(true);
        model.hand().use(tool);
        board.focusTool();
    }

    /** Opens the column. */
    void show() {
        isOpen = true;
        actions.showBoard();
        board.tracing(true);
        panel.get().focusFirst();
    }

    /** Puts the column away where something else takes its place. */
    void leave() {
        isOpen = false;
        model.hand().use(Tool.BOARD);
        board.tracing(false);
    }

    @Override
    public void close() {
        leave();
        actions.showBoard();
    }

    @Override
    public void takeOff() {
        model.readings()
                .ifPresent(
                        readings -> {
                            String name =
                                    model.state()
                                            .value()
                                            .picture()
                                            .map(p -> p.file().getFileName().toString())
                                            .orElse("photograph");
                            double tolerance =
                                    model.state()
                                            .value()
                                            .exactness()
                                            .map(PictureExactness::toleranceMm)
                                            .orElse(TakeOffModel.USUAL_TOLERANCE_MM);
                            takeOff.take(readings, name, tolerance);
                            showTakeOff.run();
                        });
    }

    @Override
    public void save() {
        String name =
                model.state()
                        .value()
                        .picture()
                        .map(p -> p.file().getFileName().toString())
                        .orElse("photograph")
                        .replaceAll("\\.[^.]*$", "");
        dialogs.saveReadings(folder.get(), name + ".csv").ifPresent(model::save);
    }
}
