package haftline.ui.app;

import haftline.ui.adjust.AdjustPane;
import haftline.ui.adjust.DoubtBar;
import haftline.ui.adjust.TakeOffPane;
import haftline.ui.board.BoardPane;
import haftline.ui.model.CombModel;
import haftline.ui.model.DoubtModel;
import haftline.ui.model.EditorModel;
import haftline.ui.model.Overlay;
import haftline.ui.model.ProposalModel;
import haftline.ui.model.TakeOffModel;
import haftline.ui.model.Viewpoint;
import haftline.ui.model.Watched;
import haftline.ui.photo.PhotoBoard;
import haftline.ui.theme.Later;
import haftline.ui.theme.Palette;
import java.nio.file.Path;
import java.util.concurrent.Executor;
import java.util.concurrent.Executors;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.CheckMenuItem;
import javafx.scene.control.Menu;
import javafx.scene.control.SeparatorMenuItem;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/**
 * What is worked out for the maker: adjusting, fairing, comb, doubt, take-off and the photograph to
 * trace over, with the menu.
 */
final class Aids {
    private final Actions actions;
    private final Dialogs dialogs;
    private final Runnable showTakeOff;
    private final EditorModel editor;
    private final ProposalModel proposals;
    private final CombModel comb;
    private final DoubtModel doubt;
    private final TakeOffModel takeOff;
    private final Late<AdjustPane> adjustPane;
    private final Late<DoubtBar> doubtBar;
    private final Late<TakeOffPane> takeOffPane;
    private final VBox onBoard = new VBox();
    private final Photographs photographs;
    private final Watched<Overlay> overlay = new Watched<>(Overlay.NONE);
    private final CheckMenuItem doubtItem = new CheckMenuItem("_Doubt");
    private boolean isAdjusting;

    /**
     * @param actions what else can be done
     * @param editor what all views share
     * @param dialogs how files are asked for
     * @param showTakeOff brings the take-off's page up
     */
    Aids(Actions actions, EditorModel editor, Dialogs dialogs, Runnable showTakeOff) {
        this.actions = actions;
        this.editor = editor;
        this.dialogs = dialogs;
        this.showTakeOff = showTakeOff;
        Executor background = background();
        proposals = new ProposalModel(editor, background, Platform::runLater);
        comb = new CombModel(editor);
        // One processor is left for the hand.
        int threads = Math.max(1, Runtime.getRuntime().availableProcessors() - 1);
        doubt =
                new DoubtModel(
                        editor,
                        background,
                        Platform::runLater,
                        what -> new Later(what)::call,
                        threads);
        takeOff = new TakeOffModel(editor, background, Platform::runLater);
        adjustPane = new Late<>(() -> new AdjustPane(editor, proposals, this::closeAdjust));
        doubtBar = new Late<>(() -> new DoubtBar(editor, doubt, () -> showDoubt(false)));
        takeOffPane =
                new Late<>(
                        () ->
                                new TakeOffPane(
                                        editor,
                                        takeOff,
                                        () -> dialogs.openReadings(folder()),
                                        name -> dialogs.saveShape(folder(), name),
                                        actions::showBoard));
        photographs =
                new Photographs(
                        actions,
                        editor,
                        dialogs,
                        this::folder,
                        background,
                        takeOff,
                        this::showTakeOff);
        photographs.model().state().watch(state -> lay());
        photographs.model().share().watch(share -> lay());
        photographs.model().isShown().watch(shown -> lay());
        proposals.ghost().watch(ghost -> lay());
        comb.comb().watch(teeth -> lay());
        doubt.state().watch(state -> lay());
    }

    private static Executor background() {
        return Executors.newFixedThreadPool(
                2,
                work -> {
                    Thread thread = new Thread(work, "working out");
                    thread.setDaemon(true);
                    return thread;
                });
    }

    private Path folder() {
        return editor.document().loaded().file().toAbsolutePath().getParent();
    }

    private void lay() {
        overlay.set(
                new Overlay(
                        proposals.ghost().value(),
                        comb.comb().value(),
                        doubt.state().value().answer().map(ways -> ways.stated()),
                        doubt.state().value().stage() != DoubtModel.Stage.OFF,
                        photographs.model().strength()));
    }

    /** What is laid over the piece on the board. */
    Watched<Overlay> overlay() {
        return overlay;
    }

    /** The board with what belongs to a photograph about it, and the lines of the doubt below. */
    Node about(BoardPane board, Viewpoint viewpoint, Watched<Palette> palette) {
        PhotoBoard photoBoard = photographs.about(board, viewpoint, palette);
        VBox.setVgrow(photoBoard, Priority.ALWAYS);
        onBoard.getChildren().add(photoBoard);
        return onBoard;
    }

    /** The page that takes a shape off. */
    Late<TakeOffPane> takeOffPage() {
        return takeOffPane;
    }

    Menu menu() {
        CheckMenuItem combItem = new CheckMenuItem("_Curvature comb");
        combItem.setAccelerator(MenuLine.shiftKey(KeyCode.K));
        combItem.setOnAction(
                e -> {
                    actions.showBoard();
                    comb.isShown().set(combItem.isSelected());
                });
        doubtItem.setAccelerator(MenuLine.shiftKey(KeyCode.D));
        doubtItem.setOnAction(e -> showDoubt(doubtItem.isSelected()));
        Menu menu = new Menu("_Work out");
        menu.getItems()
                .addAll(
                        MenuLine.of("_Adjust and fair…", this::showAdjust, MenuLine.key(KeyCode.J)),
                        MenuLine.of("_Fair the line", this::fair, MenuLine.shiftKey(KeyCode.J)),
                        new SeparatorMenuItem(),
                        combItem,
                        doubtItem,
                        new SeparatorMenuItem(),
                        MenuLine.of("_Take off a handle…", this::takeOff, MenuLine.key(KeyCode.T)),
                        photographs.menu());
        return menu;
    }

    /**
     * What stands in the column beside the board.
     *
     * @param inspector what stands there else
     * @return the panel while it is open, so that the board keeps its size
     */
    Node beside(Node inspector) {
        return photographs.isOpen()
                ? photographs.panel()
                : isAdjusting ? adjustPane.get() : inspector;
    }

    /** A photograph under the board. */
    Photographs photographs() {
        return photographs;
    }

    void showAdjust() {
        photographs.leave();
        isAdjusting = true;
        actions.showBoard();
        adjustPane.get().focusFirst();
    }

    private void closeAdjust() {
        isAdjusting = false;
        actions.showBoard();
    }

    private void fair() {
        showAdjust();
        proposals.fair();
    }

    void showDoubt(boolean on) {
        doubtItem.setSelected(on);
        if (on) {
            if (doubtBar.made().isEmpty()) {
                onBoard.getChildren().add(doubtBar.get());
            }
            actions.showBoard();
        }
        doubt.show(on);
    }

    private void takeOff() {
        dialogs.openReadings(folder()).ifPresentOrElse(this::takeOff, this::showTakeOff);
    }

    void takeOff(Path readings) {
        takeOff.open(readings);
        showTakeOff();
    }

    void showTakeOff() {
        showTakeOff.run();
        takeOffPane.get().focusFirst();
    }
}
