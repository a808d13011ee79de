package haftline.ui.app;

import haftline.edit.OpenDocument;
import haftline.edit.Worked;
import haftline.findings.Finding;
import haftline.measure.Units;
import haftline.set.Piece;
import haftline.store.DocumentException;
import haftline.store.SetFile;
import haftline.ui.board.BoardPane;
import haftline.ui.findings.FindingsPane;
import haftline.ui.inspector.InspectorPane;
import haftline.ui.lineup.LineUpPane;
import haftline.ui.model.BoardModel;
import haftline.ui.model.EditorModel;
import haftline.ui.model.Watched;
import haftline.ui.pieces.PiecesPane;
import haftline.ui.theme.Palette;
import java.io.File;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Orientation;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.SplitPane;
import javafx.scene.input.TransferMode;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** The whole window: what stands where, and what menus and keys do. */
public final class Workbench extends BorderPane implements Actions {
    private final EditorModel editor;
    private final Watched<Palette> palette;
    private final Settings settings;
    private final Dialogs dialogs;
    private final BoardPane board;
    private final LineUpPane lineUp;
    private final Header header;
    private final StackPane middle = new StackPane();
    private final Label notice = new Label();
    private final HBox noticeBar;
    private final Label unmade = new Label();
    private Guide guide;

    /**
     * The window's content.
     *
     * @param editor what all views share
     * @param settings what is remembered
     * @param dialogs how questions are put
     */
    public Workbench(EditorModel editor, Settings settings, Dialogs dialogs) {
        this.editor = editor;
        this.settings = settings;
        this.dialogs = dialogs;
        palette = new Watched<>(settings.dark() ? Palette.SLATE : Palette.PAPER);
        editor.units().set(settings.units());
        Watched<Optional<Finding>> chosen = new Watched<>(Optional.empty());
        BoardModel model = new BoardModel(editor);
        getStyleClass().addAll("workbench", palette.value().name());
        getStylesheets().add(Workbench.class.getResource("/haftline/ui/haftline.css").toString());
        board = new BoardPane(editor, model, chosen, palette);
        board.setId("board");
        lineUp = new LineUpPane(editor, palette, this::showBoard);
        lineUp.setVisible(false);
        unmade.getStyleClass().add("unmade");
        unmade.setVisible(false);
        unmade.setMouseTransparent(true);
        StackPane.setAlignment(unmade, Pos.TOP_CENTER);
        middle.getChildren().addAll(board, unmade, lineUp);
        noticeBar = noticeBar();
        SplitPane halves = new SplitPane(middle, new FindingsPane(editor, chosen));
        halves.setOrientation(Orientation.VERTICAL);
        halves.setDividerPositions(0.81);
        VBox centre = new VBox(noticeBar, halves);
        VBox.setVgrow(halves, Priority.ALWAYS);
        header = new Header(editor, this);
        Menus menus = new Menus(editor, this, settings::recent);
        VBox top = new VBox(menus, header);
        setTop(top);
        setLeft(new PiecesPane(editor, palette));
        setCenter(centre);
        setRight(new InspectorPane(editor, model));
        editor.notice().follow(this::tell);
        editor.worked().follow(this::drawnOrNot);
        if (!settings.guideSeen()) {
            showGuide();
        }
        acceptFiles();
    }

    private HBox noticeBar() {
        notice.setWrapText(true);
        notice.setId("notice");
        Button close = new Button("Dismiss");
        close.getStyleClass().add("quiet");
        close.setOnAction(e -> editor.notice().set(Optional.empty()));
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        HBox bar = new HBox(12, notice, gap, close);
        bar.getStyleClass().add("notice");
        bar.setAlignment(Pos.CENTER_LEFT);
        return bar;
    }

    private void tell(Optional<String> why) {
        notice.setText(why.orElse(""));
        noticeBar.setVisible(why.isPresent());
        noticeBar.setManaged(why.isPresent());
    }

    private void drawnOrNot(Worked worked) {
        boolean shown = editor.drawn().value().isPresent();
        unmade.setVisible(worked.impossible().isPresent());
        unmade.setText(
                worked.impossible().orElse("")
                        + (shown ? ". Shown as it last could be drawn." : ""));
    }

    private void acceptFiles() {
        setOnDragOver(
                e -> {
                    if (e.getDragboard().hasFiles()) {
                        e.acceptTransferModes(TransferMode.COPY);
                    }
                    e.consume();
                });
        setOnDragDropped(
                e -> {
                    if (e.getDragboard().hasFiles()) {
                        File file = e.getDragboard().getFiles().get(0);
                        open(file.toPath());
                        e.setDropCompleted(true);
                    }
                    e.consume();
                });
    }

    @Override
    public void showBoard() {
        show(false);
    }

    @Override
    public void showLineUp() {
        show(true);
    }

    private void show(boolean inLine) {
        lineUp.setVisible(inLine);
        header.viewing(inLine);
        if (!inLine) {
            board.requestFocus();
        }
    }

    @Override
    public void units(Units units) {
        settings.units(units);
        editor.units().set(units);
    }

    @Override
    public void dark(boolean dark) {
        settings.dark(dark);
        Palette wanted = dark ? Palette.SLATE : Palette.PAPER;
        getStyleClass().removeAll(Palette.PAPER.name(), Palette.SLATE.name());
        getStyleClass().add(wanted.name());
        palette.set(wanted);
    }

    @Override
    public boolean isDark() {
        return settings.dark();
    }

    @Override
    public void open() {
        Path beside = editor.document().loaded().file().toAbsolutePath().getParent();
        dialogs.openSet(beside).ifPresent(this::open);
    }

    @Override
    public void open(Path set) {
        if (editor.status().value().isModified()
                && !dialogs.dropChanges(editor.draft().value().set().name())) {
            return;
        }
        try {
            editor.show(OpenDocument.of(SetFile.read(set)));
            settings.opened(set);
        } catch (DocumentException wrong) {
            editor.refuse(wrong.getMessage());
        }
    }

    @Override
    public void close() {
        if (mayClose()) {
            getScene().getWindow().hide();
        }
    }

    /**
     * Whether the window may go: nothing is unsaved, or the maker lets it go.
     *
     * @return true to close
     */
    public boolean mayClose() {
        return !editor.status().value().isModified()
                || dialogs.dropChanges(editor.draft().value().set().name());
    }

    @Override
    public void nextPiece(int by) {
        List<Piece> pieces = editor.draft().value().set().pieces();
        for (int i = 0; i < pieces.size(); i++) {
            int to = i + by;
            if (pieces.get(i).name().equals(editor.piece().value())
                    && to >= 0
                    && to < pieces.size()) {
                editor.choose(pieces.get(to).name());
                return;
            }
        }
    }

    @Override
    public void fit() {
        board.fit();
    }

    @Override
    public void zoom(boolean in) {
        board.zoom(in);
    }

    @Override
    public void showGuide() {
        if (guide == null) {
            guide = new Guide(this::dismissGuide);
            StackPane.setAlignment(guide, Pos.BOTTOM_RIGHT);
            middle.getChildren().add(guide);
        }
    }

    private void dismissGuide() {
        middle.getChildren().remove(guide);
        guide = null;
        settings.guideSeen(true);
        board.requestFocus();
    }
}
