package haftline.ui.lineup;

import haftline.figures.Figures;
import haftline.handle.Handle;
import haftline.set.LineUp;
import haftline.set.Piece;
import haftline.ui.board.Pictures;
import haftline.ui.board.PiecePicture;
import haftline.ui.model.EditorModel;
import haftline.ui.model.FamilyModel;
import haftline.ui.model.Watched;
import haftline.ui.theme.Later;
import haftline.ui.theme.Letters;
import haftline.ui.theme.Palette;
import haftline.ui.words.Shown;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javafx.geometry.Orientation;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.SplitPane;
import javafx.scene.image.Image;
import javafx.scene.layout.StackPane;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.TextAlignment;

/**
 * All pieces at one scale, shoulders under each other, swells and butts joined by lines, so that
 * the eye sees what differs; under them the same in figures.
 */
public final class LineUpPane extends StackPane {
    /** Room for names on the left, px, and between them and the pieces. */
    private static final double MOST_NAMES = 200;

    private static final double NAMES_GAP = 16;

    /** Between the pieces and the figures on their right, px. */
    private static final double FIGURES_GAP = 14;

    /** A board is never so narrow, px; before the first layout it is. */
    private static final double LEAST_WIDTH = 200;

    /** Smallest scale of the pieces, px/mm. */
    private static final double LEAST_SCALE = 0.2;

    private static final double MARGIN = 18;

    /** The scroll bar and the air on both sides, px. */
    private static final double ASIDE = 34;

    private static final int SEEN_WHOLE = 6;

    /** How much of the height the pictures have; the table has the rest. */
    private static final double PICTURES_SHARE = 0.6;

    /** Pictures that are kept: two screens full. */
    private static final int KEPT = 24;

    /** Air over and under each piece, px. */
    private static final double AIR = 34;

    /** A lower row gives its pieces the air's room. */
    private static final double ROOMY = 80;

    private static final double LEAST_AIR = 22;

    /** Three lines of figures, px. */
    private static final double LEAST_ROW = 52;

    private static final double NAME_LINE = 16;

    private static final Font NAME = Font.font(null, FontWeight.BOLD, 13);
    private static final Font SMALL = Font.font(11);

    private final EditorModel editor;
    private final Watched<Palette> palette;
    private final Runnable opened;
    private final FamilyModel family;
    private final ListView<Piece> list = new ListView<>();
    private final Map<String, LineUp.Places> places = new HashMap<>();
    private final Pictures pictures = new Pictures(KEPT);
    private double names;
    private double figures;
    private double scale = 1;
    private double shoulder;
    private double widestMm;

    /**
     * The pieces of the open set in line.
     *
     * @param editor what all views share
     * @param palette colours of the theme
     * @param family how the pieces match
     * @param opened told when a piece is wanted on the board
     */
    public LineUpPane(
            EditorModel editor, Watched<Palette> palette, FamilyModel family, Runnable opened) {
        this.family = family;
        this.editor = editor;
        this.palette = palette;
        this.opened = opened;
        getStyleClass().add("line-up");
        list.setId("line-up");
        list.getStyleClass().add("line-up-rows");
        list.setAccessibleText("All pieces at one scale; Enter puts one on the board");
        list.setCellFactory(view -> new Row());
        list.setOnMouseClicked(
                e -> {
                    if (e.getClickCount() == 2) {
                        open();
                    }
                });
        list.setOnKeyPressed(
                e -> {
                    if (e.getCode() == javafx.scene.input.KeyCode.ENTER) {
                        open();
                    }
                });
        SplitPane halves = new SplitPane(list, new DifferencesPane(editor, family));
        halves.setOrientation(Orientation.VERTICAL);
        halves.setDividerPositions(PICTURES_SHARE);
        getChildren().add(halves);
        Later later = new Later(this::match);
        list.widthProperty().addListener(o -> refresh());
        list.heightProperty().addListener(o -> refresh());
        visibleProperty()
                .addListener(
                        o -> {
                            refresh();
                            later.call();
                        });
        editor.draft()
                .watch(
                        draft -> {
                            refresh();
                            later.call();
                        });
        family.matched()
                .watch(
                        matched -> {
                            places.clear();
                            matched.lineUp().places().forEach(p -> places.put(p.piece(), p));
                            list.refresh();
                        });
        editor.units().watch(units -> refresh());
        palette.watch(theme -> refresh());
    }

    /**
     * How many pictures of pieces were painted so far.
     *
     * @return the count
     */
    public int painted() {
        return pictures.painted();
    }

    private List<Piece> pieces() {
        return editor.draft().value().set().pieces();
    }

    private void open() {
        Piece piece = list.getSelectionModel().getSelectedItem();
        if (piece != null) {
            editor.choose(piece.name());
            opened.run();
        }
    }

    private void match() {
        if (isVisible()) {
            family.refresh();
        }
    }

    private void refresh() {
        if (!isVisible() || list.getHeight() < 1 || getWidth() < LEAST_WIDTH) {
            return;
        }
        double front = 1;
        double back = 1;
        widestMm = 1;
        names = 0;
        figures = 0;
        for (Piece piece : pieces()) {
            names = Math.max(names, Letters.width(piece.name(), NAME));
            names = Math.max(names, Letters.width(stock(piece), SMALL));
            Figures worked = editor.document().worked(piece.name()).figures().orElse(null);
            if (worked != null) {
                for (String line : figures(worked)) {
                    figures = Math.max(figures, Letters.width(line, SMALL));
                }
                Handle handle = worked.handle();
                front = Math.max(front, -handle.ferruleFaceX());
                back = Math.max(back, handle.buttX() + handle.lengths().capMm());
                widestMm = Math.max(widestMm, 2 * PiecePicture.radius(handle));
            }
        }
        names = Math.min(MOST_NAMES, names) + NAMES_GAP;
        figures += FIGURES_GAP;
        double room = getWidth() - names - figures - 2 * MARGIN - ASIDE;
        // A handful of pieces is seen whole; a long set is read row by row.
        double row = (list.getHeight() - 8) / Math.min(SEEN_WHOLE, pieces().size());
        double air = row < ROOMY ? LEAST_AIR : AIR;
        double tall = row - air;
        scale = Math.max(LEAST_SCALE, Math.min(room / (front + back), tall / widestMm));
        shoulder = names + MARGIN + front * scale;
        list.setFixedCellSize(Math.max(LEAST_ROW, Math.ceil(widestMm * scale + air)));
        if (!list.getItems().equals(pieces())) {
            list.getItems().setAll(pieces());
        }
        list.refresh();
    }

    /** What a line runs through: a place and the diameter there, mm. */
    private record Spot(double x, double diameter) {
        static Spot swell(LineUp.Places places) {
            return places == null ? null : new Spot(places.swellX(), places.swellMm());
        }

        static Spot butt(LineUp.Places places) {
            return places == null ? null : new Spot(places.buttX(), places.buttMm());
        }
    }

    private final class Row extends ListCell<Piece> {
        private final Canvas canvas = new Canvas();

        Row() {
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
            canvas.setWidth(Math.max(1, LineUpPane.this.getWidth() - ASIDE));
            canvas.setHeight(list.getFixedCellSize());
            paint(piece);
            setGraphic(canvas);
        }

        private void paint(Piece piece) {
            GraphicsContext gc = canvas.getGraphicsContext2D();
            double width = canvas.getWidth();
            double height = canvas.getHeight();
            double axis = Math.round(height / 2);
            Palette p = palette.value();
            gc.clearRect(0, 0, width, height);
            gc.setTextAlign(TextAlignment.LEFT);
            gc.setFill(p.ink());
            gc.setFont(NAME);
            List<String> name =
                    NameLines.of(
                            piece.name(), names - NAMES_GAP, text -> Letters.width(text, NAME));
            double base = axis - 2 - (name.size() - 1) * NAME_LINE / 2;
            for (String line : name) {
                gc.fillText(line, 4, base);
                base += NAME_LINE;
            }
            gc.setFont(SMALL);
            gc.setFill(p.soft());
            gc.fillText(Letters.cut(stock(piece), SMALL, names - NAMES_GAP), 4, base);
            gc.setStroke(p.soft());
            gc.setLineWidth(1);
            gc.setLineDashes(16, 3, 3, 3);
            gc.strokeLine(names, axis + 0.5, width - figures, axis + 0.5);
            gc.setLineDashes(3, 3);
            gc.setStroke(p.line());
            gc.strokeLine(Math.round(shoulder) + 0.5, 0, Math.round(shoulder) + 0.5, height);
            gc.setLineDashes();
            Figures worked = editor.document().worked(piece.name()).figures().orElse(null);
            if (worked == null) {
                gc.setFill(p.stop());
                gc.fillText("cannot be drawn", shoulder + 8, axis - 8);
                setAccessibleText(piece.name() + ", cannot be drawn");
                return;
            }
            picture(gc, worked.handle(), axis, p);
            lines(gc, getIndex(), axis, p);
            figures(gc, worked, axis, p);
            setAccessibleText(piece.name() + ", " + length(worked) + " long, " + swell(worked));
        }

        /** From piece to piece; whoever follows them with the eye sees which steps aside. */
        private void lines(GraphicsContext gc, int index, double axis, Palette p) {
            double width = canvas.getWidth();
            LineUp.Places here = placesAt(index);
            if (here == null) {
                return;
            }
            LineUp.Places above = placesAt(index - 1);
            LineUp.Places below = placesAt(index + 1);
            gc.setLineWidth(1.3);
            gc.setLineDashes(7, 4);
            gc.setStroke(p.accent());
            join(gc, axis, Spot.swell(above), Spot.swell(here), Spot.swell(below));
            gc.setStroke(p.ink());
            gc.setLineDashes(2, 3);
            join(gc, axis, Spot.butt(above), Spot.butt(here), Spot.butt(below));
            gc.setLineDashes();
            if (index == 0) {
                gc.setTextAlign(TextAlignment.RIGHT);
                gc.setFont(SMALL);
                gc.setFill(p.accent());
                gc.fillText("swell line", shoulder + here.swellX() * scale + 12, 11);
                gc.setTextAlign(TextAlignment.LEFT);
                gc.setFill(p.soft());
                double behind = shoulder + here.swellX() * scale + 20;
                double most = width - figures + FIGURES_GAP - 6 - Letters.width("butt line", SMALL);
                double butt = Math.max(behind, shoulder + here.buttX() * scale - 12);
                gc.fillText("butt line", Math.min(butt, Math.max(behind, most)), 11);
            }
        }

        private void join(GraphicsContext gc, double axis, Spot above, Spot here, Spot below) {
            double height = canvas.getHeight();
            double x = shoulder + here.x() * scale;
            double half = here.diameter() * scale / 2;
            gc.strokeLine(x, axis - half, x, axis + half);
            if (above != null) {
                double gap = height - half - above.diameter() * scale / 2;
                double share = (axis - half) / gap;
                double edge = x + share * (above.x() - here.x()) * scale;
                gc.strokeLine(edge, 0, x, axis - half);
            }
            if (below != null) {
                double gap = height - half - below.diameter() * scale / 2;
                double share = (height - axis - half) / gap;
                double edge = x + share * (below.x() - here.x()) * scale;
                gc.strokeLine(x, axis + half, edge, height);
            }
        }

        private LineUp.Places placesAt(int index) {
            List<Piece> all = list.getItems();
            return index < 0 || index >= all.size() ? null : places.get(all.get(index).name());
        }

        private void picture(GraphicsContext gc, Handle handle, double axis, Palette p) {
            double density =
                    LineUpPane.this.getScene() == null
                            ? 1
                            : LineUpPane.this.getScene().getWindow().getRenderScaleX();
            Image image = pictures.of(handle, p, scale * density);
            double x = shoulder + handle.ferruleFaceX() * scale;
            double w = image.getWidth() / density;
            double h = image.getHeight() / density;
            gc.drawImage(image, Math.round(x), axis - Math.round(h / 2), w, h);
        }

        private void figures(GraphicsContext gc, Figures worked, double axis, Palette p) {
            double x = canvas.getWidth() - figures + FIGURES_GAP;
            List<String> lines = LineUpPane.this.figures(worked);
            for (int i = 0; i < lines.size(); i++) {
                gc.setFill(i == 0 ? p.ink() : p.soft());
                gc.fillText(lines.get(i), x, axis - 12 + 16 * i);
            }
        }
    }

    private List<String> figures(Figures worked) {
        Shown shown = new Shown(editor.units().value());
        return List.of(
                length(worked) + " long",
                swell(worked),
                shown.mass(worked.balance().totalG())
                        + ", balance "
                        + shown.length(worked.balance().fromFerruleFaceMm()));
    }

    private String length(Figures worked) {
        return new Shown(editor.units().value()).length(worked.handle().lengths().overallMm());
    }

    private String swell(Figures worked) {
        return "swell ⌀ "
                + new Shown(editor.units().value())
                        .length(2 * worked.handle().outline().greatest().r());
    }

    private String stock(Piece piece) {
        return editor.document().worked(piece.name()).brief().stock().name();
    }
}
