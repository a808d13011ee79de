package haftline.ui.app;

import haftline.edit.SetEdits;
import haftline.edit.Worked;
import haftline.measure.Units;
import haftline.shape.Detail;
import haftline.ui.board.BoardPane;
import haftline.ui.findings.FindingsPane;
import haftline.ui.findings.RuleCard;
import haftline.ui.inspector.InspectorPane;
import haftline.ui.model.BoardModel;
import haftline.ui.model.EditorModel;
import haftline.ui.model.FilesModel;
import haftline.ui.model.FindingsModel;
import haftline.ui.model.InspectorModel;
import haftline.ui.model.PiecesModel;
import haftline.ui.model.Preferences;
import haftline.ui.model.Watched;
import haftline.ui.photo.PictureReader;
import haftline.ui.pieces.PiecesPane;
import haftline.ui.templates.TemplatesPane;
import haftline.ui.theme.Palette;
import java.io.File;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.geometry.Orientation;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.SplitPane;
import javafx.scene.input.TransferMode;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** The whole window: what stands where, and what menus and keys do. */
public final class Workbench extends BorderPane implements Actions {
    /** A finding and its remedy are seen however low the window is, px. */
    private static final double LEAST_FOOT = 92;

    private final EditorModel editor;
    private final Watched<Palette> palette;
    private final Preferences preferences;
    private final Dialogs dialogs;
    private final FilesModel files;
    private final Filing filing;
    private final PiecesModel pieces;
    private final BoardModel model;
    private final BoardPane board;
    private final Pages pages;
    private final InspectorPane inspector;
    private final Foot foot;
    private final LeftSide left;
    private final FindingsPane found;
    private final Aids aids;
    private final Header header;
    private final StackPane middle = new StackPane();
    private final Label unmade = new Label();
    private Guide guide;

    /**
     * The window's content.
     *
     * @param editor what all views share
     * @param preferences what is remembered
     * @param files opening and saving
     * @param dialogs how questions are put
     * @param opener opens a folder on the desktop
     */
    public Workbench(
            EditorModel editor,
            Preferences preferences,
            FilesModel files,
            Dialogs dialogs,
            Consumer<Path> opener) {
        this.editor = editor;
        this.preferences = preferences;
        this.files = files;
        this.dialogs = dialogs;
        filing = new Filing(editor, files, dialogs);
        pieces = new PiecesModel(editor);
        palette = new Watched<>(preferences.isDark() ? Palette.SLATE : Palette.PAPER);
        editor.units().set(preferences.units());
        FindingsModel findings = new FindingsModel(editor);
        model = new BoardModel(editor);
        getStyleClass().addAll("workbench", palette.value().name());
        aids = new Aids(this, editor, dialogs, () -> show(Showing.TAKE_OFF));
        board = new BoardPane(editor, model, findings.chosen(), palette, aids.overlay());
        board.setId("board");
        unmade.getStyleClass().add("unmade");
        unmade.setWrapText(true);
        unmade.setVisible(false);
        unmade.setMouseTransparent(true);
        StackPane.setAlignment(unmade, Pos.TOP_CENTER);
        RuleCard rule = new RuleCard(opener, this::focusFindings);
        found = new FindingsPane(editor, findings, rule::show);
        StackPane.setAlignment(rule, Pos.BOTTOM_CENTER);
        middle.getChildren().addAll(aids.about(board, model.viewpoint(), palette), unmade);
        pages =
                new Pages(
                        editor,
                        preferences,
                        palette,
                        dialogs,
                        filing::folder,
                        opener,
                        this,
                        middle,
                        unmade);
        pages.add(Showing.TAKE_OFF, aids.takeOffPage());
        // Hidden, it would be walked through with every frame.
        rule.visibleProperty().addListener((o, was, is) -> layRule(rule));
        findings.findings().watch(list -> rule.hide());
        foot = new Foot(new Notice(editor), LEAST_FOOT);
        foot.show(found);
        SplitPane halves = new SplitPane(middle, foot);
        halves.setOrientation(Orientation.VERTICAL);
        halves.setDividerPositions(0.81);
        header = new Header(editor, this);
        PieceMenu piece = new PieceMenu(editor, pieces, this);
        Menus menus = new Menus(editor, piece, this, () -> files.recent().value());
        menus.getMenus().add(menus.getMenus().size() - 2, aids.menu());
        VBox top = new VBox(menus, header);
        setTop(top);
        left = new LeftSide(this, new PiecesPane(editor, pieces, palette, piece::atThumbnail));
        setCenter(halves);
        inspector = new InspectorPane(new InspectorModel(editor), model, preferences);
        setRight(inspector);
        editor.worked().follow(this::drawnOrNot);
        if (!preferences.isGuideDismissed()) {
            showGuide();
        }
        acceptFiles();
        StepKeys.keep(this, editor);
        MenuKey.heed(this);
        Ground.lay(this, palette);
    }

    /** Above the pages, below the guide. */
    private void layRule(RuleCard rule) {
        List<Node> laid = middle.getChildren();
        laid.remove(rule);
        if (rule.isVisible()) {
            laid.add(guide == null ? laid.size() : laid.indexOf(guide), rule);
        }
    }

    private void focusFindings() {
        found.focusList();
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
                        drop(file.toPath());
                        e.setDropCompleted(true);
                    }
                    e.consume();
                });
    }

    /** A picture is one to trace over, all else a set. */
    private void drop(Path file) {
        if (PictureReader.isPicture(file)) {
            aids.photographs().open(file);
        } else {
            open(file);
        }
    }

    @Override
    public void showBoard() {
        show(Showing.BOARD);
        board.requestFocus();
    }

    @Override
    public void showLineUp() {
        show(Showing.LINE_UP);
    }

    @Override
    public void showSheet() {
        show(Showing.SHEET);
    }

    @Override
    public void showTemplates() {
        show(Showing.TEMPLATES);
    }

    @Override
    public void showBatch() {
        show(Showing.BATCH);
    }

    @Override
    public void showProduction() {
        show(Showing.PRODUCTION);
    }

    @Override
    public void print() {
        showSheet();
        pages.print();
    }

    @Override
    public void showExport() {
        pages.chooseExport(false);
        show(Showing.EXPORT);
    }

    @Override
    public void exportTemplates() {
        pages.chooseExport(true);
        show(Showing.EXPORT);
    }

    private void show(Showing showing) {
        pages.show(showing);
        left.show(showing);
        Optional<TemplatesPane> templates = pages.templates();
        setRight(pages.side().orElseGet(() -> aids.beside(inspector)));
        foot.show(templates.<Node>map(TemplatesPane::remarks).orElse(found));
        if (guide != null) {
            // It speaks of the board.
            guide.setVisible(showing == Showing.BOARD);
        }
        header.viewing(showing);
    }

    @Override
    public void units(Units units) {
        preferences.units(units);
        editor.units().set(units);
    }

    @Override
    public void dark(boolean dark) {
        preferences.dark(dark);
        Palette wanted = dark ? Palette.SLATE : Palette.PAPER;
        getStyleClass().removeAll(Palette.PAPER.name(), Palette.SLATE.name());
        getStyleClass().add(wanted.name());
        palette.set(wanted);
    }

    @Override
    public boolean isDark() {
        return preferences.isDark();
    }

    @Override
    public void open() {
        filing.open();
    }

    @Override
    public void open(Path set) {
        files.open(set);
    }

    @Override
    public void begin() {
        files.newSet();
    }

    @Override
    public void save() {
        files.save();
    }

    @Override
    public void saveAs() {
        filing.saveAs();
    }

    @Override
    public void close() {
        files.close(() -> getScene().getWindow().hide());
    }

    @Override
    public void nextPiece(int by) {
        List<String> names = pieces.names().value();
        int to = names.indexOf(editor.piece().value()) + by;
        if (to >= 0 && to < names.size()) {
            editor.choose(names.get(to));
        }
    }

    @Override
    public void rename() {
        String name = editor.piece().value();
        dialogs.name("piece", name)
                .filter(wanted -> !wanted.equals(name))
                .ifPresent(wanted -> pieces.rename(name, wanted));
    }

    @Override
    public void renameSet() {
        String name = editor.draft().value().set().name();
        dialogs.name("set", name)
                .filter(wanted -> !wanted.equals(name))
                .ifPresent(wanted -> editor.run(SetEdits.rename(wanted)));
    }

    @Override
    public void fit() {
        pages.templates().ifPresentOrElse(TemplatesPane::fit, board::fit);
    }

    @Override
    public void zoom(boolean in) {
        pages.templates().ifPresentOrElse(page -> page.zoom(in), () -> board.zoom(in));
    }

    @Override
    public void showGuide() {
        if (guide == null) {
            Node under = middle.getChildren().get(0);
            guide = new Guide(editor.opened(), middle, under, this::dismissGuide);
            StackPane.setAlignment(guide, Pos.BOTTOM_RIGHT);
            middle.getChildren().add(guide);
            if (getScene() != null) {
                showBoard();
            }
        }
    }

    private void dismissGuide() {
        middle.getChildren().remove(guide);
        guide = null;
        preferences.guideDismissed(true);
        preferences.save();
        board.requestFocus();
    }

    @Override
    public void addNode() {
        onBoard(() -> model.addNodeAt(model.freePlace()));
    }

    @Override
    public void addDetail(Detail detail) {
        onBoard(() -> model.details().add(detail));
    }

    @Override
    public void askSlope() {
        onBoard(board::askSlope);
    }

    @Override
    public void turnJoin() {
        onBoard(model::turnJoin);
    }

    @Override
    public void removeChosen() {
        onBoard(model::deleteSelected);
    }

    @Override
    public double freePlace() {
        return model.freePlace();
    }

    /** What is worked out for the maker. */
    Aids aids() {
        return aids;
    }

    /** What is done to the piece is seen being done. */
    private void onBoard(Runnable action) {
        showBoard();
        action.run();
    }
}
