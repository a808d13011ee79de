package haftline.ui.pieces;

import haftline.edit.Difference;
import haftline.edit.Worked;
import haftline.figures.Figures;
import haftline.set.Piece;
import haftline.ui.board.Pictures;
import haftline.ui.board.PiecePicture;
import haftline.ui.model.EditorModel;
import haftline.ui.model.PiecesModel;
import haftline.ui.model.Watched;
import haftline.ui.theme.Later;
import haftline.ui.theme.Mark;
import haftline.ui.theme.Palette;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import javafx.geometry.Pos;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.MenuItem;
import javafx.scene.control.Tooltip;
import javafx.scene.control.skin.VirtualFlow;
import javafx.scene.image.ImageView;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.Text;

/** The list of pieces; each is drawn as it now is, all at one scale. */
public final class PiecesPane extends VBox {
    private static final double PICTURE_WIDTH = 148;
    private static final double PICTURE_HEIGHT = 46;
    private static final double ROW = 92;

    /** A further line of a name. */
    private static final double LINE = 17;

    /** A name beyond so many lines is cut; its tooltip tells it whole. */
    private static final int MOST_LINES = 4;

    /** What count and mark leave of a row, px. */
    private static final double NAME_ROOM = 116;

    /** Where a name has to be broken, no line of it is reckoned longer, px. */
    private static final double BROKEN_ROOM = 100;

    /** Names of the piece at hand are bold. */
    private static final Font NAME = Font.font(null, FontWeight.BOLD, 12.5);

    private static final int SCALED = 40;

    /** Thumbnails that are kept: some screens full of them. */
    private static final int KEPT = 64;

    private final EditorModel editor;
    private final PiecesModel model;
    private final Watched<Palette> palette;
    private final ListView<Piece> list = new ListView<>();
    private final Pictures pictures = new Pictures(KEPT);
    private final Supplier<List<MenuItem>> doable;
    private final ContextMenu menu = new ContextMenu();
    private List<String> names = List.of();
    private int nameLines = 1;
    private double longestMm = 100;
    private boolean filling;

    /**
     * The pieces of the open set.
     *
     * @param editor what all views share
     * @param model the pieces in a few words
     * @param palette colours of the theme
     * @param doable what can be done with the piece at hand
     */
    public PiecesPane(
            EditorModel editor,
            PiecesModel model,
            Watched<Palette> palette,
            Supplier<List<MenuItem>> doable) {
        this.editor = editor;
        this.doable = doable;
        this.model = model;
        this.palette = palette;
        getStyleClass().add("pieces");
        Label title = new Label("Pieces");
        title.getStyleClass().add("panel-title");
        title.setLabelFor(list);
        list.setId("pieces");
        list.setAccessibleText("Pieces of the set");
        list.setFixedCellSize(ROW);
        list.setCellFactory(view -> new Row());
        list.getSelectionModel()
                .selectedItemProperty()
                .addListener(
                        (o, was, is) -> {
                            if (!filling && is != null) {
                                editor.choose(is.name());
                            }
                        });
        list.setOnContextMenuRequested(
                event -> {
                    if (event.isKeyboardTrigger()) {
                        offer();
                        event.consume();
                    }
                });
        VBox.setVgrow(list, Priority.ALWAYS);
        getChildren().addAll(title, list);
        Later later = new Later(this::fill);
        editor.draft()
                .watch(
                        draft -> {
                            // Pictures may come a moment behind a drag.
                            if (editor.document().isInGesture()) {
                                later.call();
                            } else {
                                fill();
                            }
                        });
        editor.piece().watch(this::select);
        palette.watch(theme -> fill());
        fill();
    }

    /** Its size never goes by what it holds: the window is not laid out anew for a thumbnail. */
    @Override
    public void requestLayout() {
        setNeedsLayout(true);
    }

    /**
     * How many pictures of pieces were painted so far.
     *
     * @return the count
     */
    public int painted() {
        return pictures.painted();
    }

    /** The menu at the thumbnail of the piece at hand. */
    private void offer() {
        list.lookupAll(".list-cell").stream()
                .filter(node -> node instanceof Row row && row.isSelected() && !row.isEmpty())
                .findFirst()
                .map(row -> row.localToScreen(PICTURE_WIDTH / 2, PICTURE_HEIGHT))
                .ifPresent(place -> offer(place.getX(), place.getY()));
    }

    private void offer(double screenX, double screenY) {
        menu.getItems().setAll(doable.get());
        menu.show(list, screenX, screenY);
    }

    private List<Piece> pieces() {
        return editor.draft().value().set().pieces();
    }

    private void fill() {
        longestMm = 1;
        // Beyond a few dozen pieces the scale is told well enough by the first ones.
        pieces().stream()
                .limit(SCALED)
                .map(piece -> editor.document().worked(piece.name()))
                .flatMap(worked -> worked.figures().stream())
                .forEach(f -> longestMm = Math.max(longestMm, f.handle().lengths().overallMm()));
        makeRoom(pieces().stream().map(Piece::name).toList());
        filling = true;
        show(pieces());
        filling = false;
        select(editor.piece().value());
        list.refresh();
    }

    /** Puts in only what changed: a list that is filled anew makes all its rows anew. */
    private void show(List<Piece> pieces) {
        List<Piece> shown = list.getItems();
        if (shown.size() != pieces.size()) {
            list.getItems().setAll(pieces);
            return;
        }
        for (int i = 0; i < pieces.size(); i++) {
            if (!shown.get(i).equals(pieces.get(i))) {
                shown.set(i, pieces.get(i));
            }
        }
    }

    private void select(String name) {
        filling = true;
        for (int i = 0; i < list.getItems().size(); i++) {
            if (list.getItems().get(i).name().equals(name)) {
                list.getSelectionModel().select(i);
                bringIntoSight(i);
            }
        }
        filling = false;
    }

    /** No further than it must: a piece in sight stays where it is. */
    private void bringIntoSight(int row) {
        if (list.lookup(".virtual-flow") instanceof VirtualFlow<?> flow
                && flow.getLastVisibleCell() != null) {
            flow.scrollTo(row);
        }
    }

    /** One name that is longer than its row has all rows made for as many lines as it fills. */
    private void makeRoom(List<String> next) {
        if (!next.equals(names)) {
            names = next;
            Text text = new Text();
            text.setFont(NAME);
            double one = text.getLayoutBounds().getHeight();
            int lines = 1;
            for (String name : names) {
                text.setText(name);
                text.setWrappingWidth(0);
                boolean isBroken = text.getLayoutBounds().getWidth() > NAME_ROOM;
                text.setWrappingWidth(isBroken ? BROKEN_ROOM : 0);
                lines = Math.max(lines, (int) Math.round(text.getLayoutBounds().getHeight() / one));
            }
            nameLines = Math.min(lines, MOST_LINES);
            list.setFixedCellSize(ROW + (nameLines - 1) * LINE);
        }
    }

    private final class Row extends ListCell<Piece> {
        private final ImageView picture = new ImageView();
        private final Label name = new Label();
        private final Label note = new Label();
        private final Label count = new Label();
        private final Mark mark = new Mark();
        private final VBox box;

        Row() {
            HBox frame = new HBox(picture);
            frame.setAlignment(Pos.CENTER_LEFT);
            frame.setMinHeight(PICTURE_HEIGHT);
            frame.setMaxHeight(PICTURE_HEIGHT);
            Region gap = new Region();
            HBox.setHgrow(gap, Priority.ALWAYS);
            HBox line = new HBox(6, name, gap, count, mark);
            line.setAlignment(Pos.CENTER_LEFT);
            note.getStyleClass().add("small");
            count.getStyleClass().add("small");
            name.getStyleClass().add("piece-name");
            name.setWrapText(true);
            count.setMinWidth(Region.USE_PREF_SIZE);
            box = new VBox(1, frame, line, note);
            setPrefWidth(0);
            setOnContextMenuRequested(
                    event -> {
                        if (!isEmpty() && !event.isKeyboardTrigger()) {
                            editor.choose(getItem().name());
                            offer(event.getScreenX(), event.getScreenY());
                            event.consume();
                        }
                    });
        }

        @Override
        protected void updateItem(Piece piece, boolean empty) {
            super.updateItem(piece, empty);
            setText(null);
            if (empty || piece == null) {
                setGraphic(null);
                return;
            }
            Worked worked = editor.document().worked(piece.name());
            name.setText(piece.name());
            name.setMaxHeight(nameLines * LINE);
            PiecesModel.Summary summary = model.summary(piece.name());
            mark.show(summary.gravest());
            note.setText(summary.stock());
            count.setText(summary.count() == 0 ? "" : Long.toString(summary.count()));
            String ways =
                    summary.differences().isEmpty()
                            ? ""
                            : "Its own: "
                                    + summary.differences().stream()
                                            .map(Difference::words)
                                            .collect(Collectors.joining(", "));
            // Of a name that is cut short the rest is told too.
            setTooltip(new Tooltip(piece.name() + (ways.isEmpty() ? "" : ". " + ways)));
            setAccessibleText(
                    piece.name()
                            + ", "
                            + summary.stock()
                            + ", "
                            + count.getText()
                            + " "
                            + Mark.words(summary.gravest()));
            picture.setImage(null);
            worked.figures().ifPresent(this::draw);
            setGraphic(box);
        }

        private void draw(Figures figures) {
            double density =
                    getScene() == null || getScene().getWindow() == null
                            ? 1
                            : Math.max(1, getScene().getWindow().getRenderScaleX());
            double tall = PICTURE_HEIGHT / (2 * PiecePicture.radius(figures.handle()));
            double scale = Math.min(tall, PICTURE_WIDTH / longestMm) * density;
            picture.setImage(pictures.of(figures.handle(), palette.value(), scale));
            picture.setFitWidth(picture.getImage().getWidth() / density);
            picture.setPreserveRatio(true);
        }
    }
}
