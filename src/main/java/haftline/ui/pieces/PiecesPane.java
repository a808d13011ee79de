package haftline.ui.pieces;

import haftline.figures.Figures;
import haftline.findings.Gravity;
import haftline.set.Piece;
import haftline.ui.app.Desk;
import haftline.ui.app.Examined;
import haftline.ui.board.PiecePicture;
import haftline.ui.theme.Mark;
import haftline.ui.theme.Palette;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.image.ImageView;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The list of pieces; each is drawn as it now is, all at one scale. */
public final class PiecesPane extends VBox {
    private static final double PICTURE_WIDTH = 148;
    private static final double PICTURE_HEIGHT = 46;
    private static final double ROW = 92;

    private final Desk desk;
    private final Supplier<Palette> palette;
    private final ListView<Piece> list = new ListView<>();
    private double longestMm = 100;

    /**
     * The pieces of a desk.
     *
     * @param desk the desk
     * @param palette colours of the theme
     */
    public PiecesPane(Desk desk, Supplier<Palette> palette) {
        this.desk = desk;
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
                .selectedIndexProperty()
                .addListener((o, was, is) -> desk.choosePiece(is.intValue()));
        VBox.setVgrow(list, Priority.ALWAYS);
        getChildren().addAll(title, list);
        desk.listen(this::changed);
        changed(Desk.Change.ALL);
    }

    private void changed(Desk.Change change) {
        if (change == Desk.Change.ALL) {
            longestMm = 1;
            // Beyond a few dozen pieces the scale is told well enough by the first ones.
            desk.set().pieces().stream()
                    .limit(40)
                    .forEach(
                            piece ->
                                    desk.examined(piece)
                                            .figures()
                                            .ifPresent(
                                                    f ->
                                                            longestMm =
                                                                    Math.max(
                                                                            longestMm,
                                                                            f.handle()
                                                                                    .lengths()
                                                                                    .overallMm())));
            if (!list.getItems().equals(desk.set().pieces())) {
                list.getItems().setAll(desk.set().pieces());
            }
            list.getSelectionModel().select(desk.pieceIndex());
            list.refresh();
        }
    }

    private final class Row extends ListCell<Piece> {
        private final ImageView picture = new ImageView();
        private final Label name = new Label();
        private final Label note = new Label();
        private final Mark mark = new Mark();
        private final VBox box;

        Row() {
            HBox frame = new HBox(picture);
            frame.setAlignment(Pos.CENTER_LEFT);
            frame.setMinHeight(PICTURE_HEIGHT);
            frame.setMaxHeight(PICTURE_HEIGHT);
            Region gap = new Region();
            HBox.setHgrow(gap, Priority.ALWAYS);
            HBox line = new HBox(6, name, gap, mark);
            line.setAlignment(Pos.CENTER_LEFT);
            note.getStyleClass().add("small");
            name.getStyleClass().add("piece-name");
            box = new VBox(1, frame, line, note);
            setPrefWidth(0);
        }

        @Override
        protected void updateItem(Piece piece, boolean empty) {
            super.updateItem(piece, empty);
            setText(null);
            if (empty || piece == null) {
                setGraphic(null);
                return;
            }
            Examined examined = desk.examined(piece);
            name.setText(piece.name());
            int stops = examined.count(Gravity.STOP);
            int warnings = examined.count(Gravity.WARN);
            mark.show(
                    stops > 0
                            ? Optional.of(Gravity.STOP)
                            : warnings > 0 ? Optional.of(Gravity.WARN) : Optional.empty());
            note.setText(
                    examined.brief().stock().name()
                            + (stops + warnings == 0
                                    ? ""
                                    : stops > 0
                                            ? ", cannot be made"
                                            : ", " + warnings + " to see"));
            picture.setImage(null);
            examined.figures().ifPresent(this::draw);
            setAccessibleText(piece.name() + ", " + note.getText());
            setGraphic(box);
        }

        private void draw(Figures figures) {
            double density =
                    getScene() == null || getScene().getWindow() == null
                            ? 1
                            : Math.max(1, getScene().getWindow().getRenderScaleX());
            double tall = PICTURE_HEIGHT / (2 * PiecePicture.radius(figures.handle()));
            double scale = Math.min(tall, PICTURE_WIDTH / longestMm) * density;
            picture.setImage(PiecePicture.of(figures.handle(), palette.get(), scale));
            picture.setFitWidth(picture.getImage().getWidth() / density);
            picture.setPreserveRatio(true);
        }
    }
}
