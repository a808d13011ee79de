package haftline.ui.sheet;

import haftline.cli.PiecePaper;
import haftline.cli.PiecePaper.Kind;
import haftline.ui.model.EditorModel;
import haftline.ui.model.PaperModel;
import haftline.ui.theme.Later;
import haftline.ui.theme.Switches;
import haftline.ui.theme.WrapBar;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.paint.Color;

/** The papers of the piece at hand, page for page as they are printed. */
public final class SheetPane extends BorderPane {
    private static final double AIR = 20;

    /** Offset of the shadow that a page throws. */
    private static final double SHADOW = 4;

    private final EditorModel editor;
    private final PaperModel model;
    private final VBox pages = new VBox(14);
    private final ScrollPane desk = new ScrollPane(pages);
    private final Label says = new Label();
    private final Map<Kind, ToggleButton> kinds = new EnumMap<>(Kind.class);
    private final Map<Kind, Boolean> isLarge = new EnumMap<>(Kind.class);
    private final ToggleButton large = new ToggleButton("Large");
    private final Button print = new Button("Print…");
    private final Button save = new Button("PDF…");

    /**
     * The papers of the piece at hand.
     *
     * @param editor what all views share
     * @param model which paper, and its pages
     * @param choose asks where to save a file of a name
     */
    public SheetPane(
            EditorModel editor, PaperModel model, Function<String, Optional<Path>> choose) {
        this.editor = editor;
        this.model = model;
        getStyleClass().add("sheet");
        says.getStyleClass().add("small");
        says.setId("sheet-says");
        says.setMinWidth(0);
        says.setWrapText(true);
        large.getStyleClass().setAll("switch", "alone");
        large.setId("sheet-large");
        large.setMinWidth(Region.USE_PREF_SIZE);
        large.setAccessibleText("Large, as wide as the view");
        large.setOnAction(
                e -> {
                    isLarge.put(model.kind().value(), large.isSelected());
                    lay();
                });
        print.setId("print");
        print.setMinWidth(Region.USE_PREF_SIZE);
        print.getStyleClass().add("first");
        print.setOnAction(e -> print());
        save.setId("sheet-save");
        save.setMinWidth(Region.USE_PREF_SIZE);
        save.setAccessibleText("Save as PDF");
        save.setOnAction(e -> model.fileName().flatMap(choose::apply).ifPresent(model::save));
        setTop(new WrapBar(List.of(chooser(), large, says), List.of(save, print)));
        setCenter(desk);
        desk.getStyleClass().add("desk");
        desk.setFitToWidth(true);
        desk.setAccessibleText("Pages as they are printed");
        pages.setAlignment(Pos.TOP_CENTER);
        pages.setPadding(new Insets(AIR));
        desk.viewportBoundsProperty().addListener((o, was, is) -> layIfChanged());
        Later later = new Later(this::follow);
        visibleProperty().addListener(o -> later.call());
        editor.worked().watch(worked -> later.call());
        editor.draft().watch(draft -> later.call());
        editor.units().watch(units -> later.call());
        model.kind()
                .follow(
                        kind -> {
                            kinds.get(kind).setSelected(true);
                            // A drawing is seen whole; words are read.
                            large.setSelected(isLarge.getOrDefault(kind, kind != Kind.DRAWING));
                        });
        model.shown().watch(shown -> show());
        model.saved().watch(saved -> words());
        show();
    }

    private Switches chooser() {
        for (Kind kind : Kind.values()) {
            ToggleButton button = new ToggleButton(kind.words());
            button.setId("paper-" + kind.name().toLowerCase(java.util.Locale.ROOT));
            button.setOnAction(e -> model.choose(kind));
            kinds.put(kind, button);
        }
        return new Switches(kinds.values().toArray(ToggleButton[]::new));
    }

    private void follow() {
        if (isVisible()) {
            model.refresh();
        }
    }

    private void words() {
        String saved = model.saved().value();
        says.setText(saved.isEmpty() ? model.shown().value().text() : saved);
    }

    private void show() {
        words();
        boolean isThere = model.shown().value().paper().isPresent();
        print.setDisable(!isThere);
        save.setDisable(!isThere);
        lay();
    }

    private double laidWidth;
    private double laidHeight;

    private void layIfChanged() {
        double width = desk.getViewportBounds().getWidth();
        double height = desk.getViewportBounds().getHeight();
        // A bar that comes or goes must not lay pages out without end.
        boolean isOther =
                Math.abs(width - laidWidth) > 2 * SHADOW
                        || !large.isSelected() && Math.abs(height - laidHeight) > 2 * SHADOW;
        if (isOther) {
            lay();
        }
    }

    private void lay() {
        pages.getChildren().clear();
        Optional<PiecePaper> paper = model.shown().value().paper();
        laidWidth = desk.getViewportBounds().getWidth();
        laidHeight = desk.getViewportBounds().getHeight();
        if (paper.isEmpty() || laidWidth < 4 * AIR || laidHeight < 4 * AIR) {
            return;
        }
        PiecePaper it = paper.get();
        double wide = (laidWidth - 2 * AIR - SHADOW) / it.widthMm();
        double whole = (laidHeight - 2 * AIR - SHADOW) / it.heightMm();
        double scale = large.isSelected() ? wide : Math.min(wide, whole);
        for (int i = 0; i < it.pages().size(); i++) {
            pages.getChildren().add(page(it, i, scale));
        }
    }

    private static Canvas page(PiecePaper paper, int index, double scale) {
        double w = Math.round(paper.widthMm() * scale);
        double h = Math.round(paper.heightMm() * scale);
        Canvas canvas = new Canvas(w + SHADOW, h + SHADOW);
        canvas.setAccessibleText(
                paper.title() + ", page " + (index + 1) + " of " + paper.pages().size());
        GraphicsContext gc = canvas.getGraphicsContext2D();
        gc.setFill(Color.gray(0, 0.18));
        gc.fillRect(SHADOW - 1, SHADOW, w, h);
        gc.setFill(Color.WHITE);
        gc.fillRect(0, 0, w, h);
        paint(gc, paper, index, scale, 0, h);
        return canvas;
    }

    /** Paints a page; left and foot are the pixels of the paper's lower left corner. */
    static void paint(
            GraphicsContext gc,
            PiecePaper paper,
            int index,
            double scale,
            double left,
            double foot) {
        new DrawingPainter(gc, scale, left, foot).paint(paper.marks().get(index));
        new DrawingPainter(gc, scale, left + paper.leftMm() * scale, foot - paper.footMm() * scale)
                .paint(paper.pages().get(index));
    }

    /** Prints the paper that is shown, at full size. */
    public void print() {
        model.shown()
                .value()
                .paper()
                .flatMap(paper -> Printing.of(paper, editor, getScene().getWindow()))
                .ifPresent(editor::refuse);
    }
}
