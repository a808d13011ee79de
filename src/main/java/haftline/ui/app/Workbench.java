package haftline.ui.app;

import haftline.figures.Figures;
import haftline.measure.Units;
import haftline.store.DocumentException;
import haftline.store.SetFile;
import haftline.ui.board.BoardPane;
import haftline.ui.board.BoardScene;
import haftline.ui.findings.FindingsPane;
import haftline.ui.inspector.InspectorPane;
import haftline.ui.lineup.LineUpPane;
import haftline.ui.pieces.PiecesPane;
import haftline.ui.theme.Palette;
import java.io.File;
import java.nio.file.Path;
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
    private final Desk desk;
    private final Settings settings;
    private final Dialogs dialogs;
    private final BoardPane board;
    private final LineUpPane lineUp;
    private final Header header;
    private final Menus menus;
    private final StackPane middle = new StackPane();
    private final Label notice = new Label();
    private final HBox noticeBar;
    private final Label unmade = new Label();
    private Guide guide;
    private Optional<Figures> last = Optional.empty();

    /**
     * The window's content.
     *
     * @param desk what is worked on
     * @param settings what is remembered
     * @param dialogs how questions are put
     */
    public Workbench(Desk desk, Settings settings, Dialogs dialogs) {
        this.desk = desk;
        this.settings = settings;
        this.dialogs = dialogs;
        NodeWork work = new NodeWork(desk);
        getStyleClass().addAll("workbench", palette().name());
        getStylesheets().add(Workbench.class.getResource("/haftline/ui/haftline.css").toString());
        board = new BoardPane(work);
        board.setId("board");
        lineUp = new LineUpPane(desk, this::palette, this::showBoard);
        lineUp.setVisible(false);
        unmade.getStyleClass().add("unmade");
        unmade.setVisible(false);
        unmade.setMouseTransparent(true);
        StackPane.setAlignment(unmade, Pos.TOP_CENTER);
        middle.getChildren().addAll(board, unmade, lineUp);
        noticeBar = noticeBar();
        SplitPane halves = new SplitPane(middle, new FindingsPane(desk));
        halves.setOrientation(Orientation.VERTICAL);
        halves.setDividerPositions(0.81);
        VBox centre = new VBox(noticeBar, halves);
        VBox.setVgrow(halves, Priority.ALWAYS);
        header = new Header(desk, this);
        menus = new Menus(desk, this, settings::recent);
        VBox top = new VBox(menus, header);
        setTop(top);
        setLeft(new PiecesPane(desk, this::palette));
        setCenter(centre);
        setRight(new InspectorPane(desk, work));
        desk.showIn(settings.units());
        desk.listen(this::changed);
        if (!settings.guideSeen()) {
            showGuide();
        }
        acceptFiles();
        changed(Desk.Change.ALL);
    }

    private HBox noticeBar() {
        notice.setWrapText(true);
        notice.setId("notice");
        Button close = new Button("Dismiss");
        close.getStyleClass().add("quiet");
        close.setOnAction(e -> desk.say(""));
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        HBox bar = new HBox(12, notice, gap, close);
        bar.getStyleClass().add("notice");
        bar.setAlignment(Pos.CENTER_LEFT);
        return bar;
    }

    private Palette palette() {
        return settings.dark() ? Palette.SLATE : Palette.PAPER;
    }

    private void changed(Desk.Change change) {
        notice.setText(desk.notice());
        noticeBar.setVisible(!desk.notice().isEmpty());
        noticeBar.setManaged(!desk.notice().isEmpty());
        Optional<Figures> now = desk.examined().figures();
        boolean same = last.filter(f -> f.handle().name().equals(desk.piece().name())).isPresent();
        if (now.isPresent()) {
            last = now;
        } else if (!same) {
            last = Optional.empty();
        }
        unmade.setVisible(now.isEmpty());
        if (now.isEmpty()) {
            unmade.setText(
                    desk.examined().findings().get(0).subject()
                            + (last.isPresent() ? ". Shown as it last could be drawn." : ""));
        }
        board.setVisible(last.isPresent());
        last.ifPresent(
                figures ->
                        board.show(
                                new BoardScene(
                                        figures,
                                        desk.node(),
                                        Optional.empty(),
                                        desk.finding(),
                                        desk.units(),
                                        palette())));
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
        desk.showIn(units);
    }

    @Override
    public void dark(boolean dark) {
        getStyleClass().remove(palette().name());
        settings.dark(dark);
        getStyleClass().add(palette().name());
        desk.showIn(desk.units());
    }

    @Override
    public boolean isDark() {
        return settings.dark();
    }

    @Override
    public void open() {
        Path beside = desk.loaded().file().toAbsolutePath().getParent();
        dialogs.openSet(beside).ifPresent(this::open);
    }

    @Override
    public void open(Path set) {
        if (desk.isModified() && !dialogs.dropChanges(desk.set().name())) {
            return;
        }
        try {
            desk.open(SetFile.read(set));
            desk.say("");
            settings.opened(set);
        } catch (DocumentException wrong) {
            desk.say(wrong.getMessage());
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
        return !desk.isModified() || dialogs.dropChanges(desk.set().name());
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
