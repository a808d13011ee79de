package haftline.ui.sheet;

import haftline.cli.Making;
import haftline.drawing.Bounds;
import haftline.drawing.Drawing;
import haftline.ui.model.EditorModel;
import haftline.ui.theme.Later;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.print.PageLayout;
import javafx.print.PageOrientation;
import javafx.print.Paper;
import javafx.print.Printer;
import javafx.print.PrinterJob;
import javafx.scene.Node;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;

/** The drawing of the piece at hand as it will lie on paper. */
public final class SheetPane extends BorderPane {
    /** A point of the printing trade, mm. */
    private static final double POINT_MM = 25.4 / 72;

    private static final double PAPER_MARGIN_MM = 6;
    private static final double AIR = 26;

    private final EditorModel editor;
    private final Canvas canvas = new Canvas();
    private final Pane desk = new Pane(canvas);
    private final Label says = new Label();
    private Optional<Drawing> drawing = Optional.empty();

    /**
     * The sheet of the piece at hand.
     *
     * @param editor what all views share
     */
    public SheetPane(EditorModel editor) {
        this.editor = editor;
        getStyleClass().add("sheet");
        Button print = new Button("Print at full size");
        print.setId("print");
        print.setOnAction(e -> print());
        says.getStyleClass().add("small");
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        HBox bar = new HBox(12, says, gap, print);
        bar.setAlignment(Pos.CENTER_LEFT);
        bar.getStyleClass().add("sheet-bar");
        setTop(bar);
        setCenter(desk);
        desk.getStyleClass().add("desk");
        desk.setMinSize(0, 0);
        desk.widthProperty().addListener(o -> paint());
        desk.heightProperty().addListener(o -> paint());
        visibleProperty().addListener(o -> follow());
        Later later = new Later(this::follow);
        editor.drawn().watch(drawn -> later.call());
    }

    private void follow() {
        if (!isVisible()) {
            return;
        }
        drawing = Making.section(editor.document().loaded(), editor.piece().value());
        says.setText(
                drawing.map(Drawing::bounds)
                        .map(
                                b ->
                                        "Section of "
                                                + editor.piece().value()
                                                + "; sheet "
                                                + Math.round(b.widthMm())
                                                + " × "
                                                + Math.round(b.heightMm())
                                                + " mm at full size, lengths in mm")
                        .orElse(editor.piece().value() + " cannot be drawn"));
        canvas.setAccessibleText(says.getText());
        paint();
    }

    private void paint() {
        double width = desk.getWidth();
        double height = desk.getHeight();
        canvas.setWidth(Math.max(1, width));
        canvas.setHeight(Math.max(1, height));
        GraphicsContext gc = canvas.getGraphicsContext2D();
        gc.clearRect(0, 0, canvas.getWidth(), canvas.getHeight());
        if (drawing.isEmpty() || !isVisible() || width < 2 * AIR || height < 2 * AIR) {
            return;
        }
        Bounds bounds = drawing.get().bounds().grown(PAPER_MARGIN_MM);
        double scale =
                Math.min(
                        (width - 2 * AIR) / bounds.widthMm(),
                        (height - 2 * AIR) / bounds.heightMm());
        double w = bounds.widthMm() * scale;
        double h = bounds.heightMm() * scale;
        double x = Math.round((width - w) / 2);
        double y = Math.round((height - h) / 2);
        gc.setFill(Color.gray(0, 0.18));
        gc.fillRect(x + 3, y + 4, w, h);
        gc.setFill(Color.WHITE);
        gc.fillRect(x, y, w, h);
        new DrawingPainter(gc, scale, x - bounds.minXMm() * scale, y + bounds.maxYMm() * scale)
                .paint(drawing.get());
    }

    private void print() {
        if (drawing.isEmpty()) {
            return;
        }
        Printer printer = Printer.getDefaultPrinter();
        PrinterJob job = printer == null ? null : PrinterJob.createPrinterJob(printer);
        if (job == null) {
            editor.refuse(
                    "No printer is set up on this machine. Export writes the same sheet as a file");
            return;
        }
        if (!job.showPrintDialog(getScene().getWindow())) {
            return;
        }
        Bounds bounds = drawing.get().bounds();
        Paper paper = job.getJobSettings().getPageLayout().getPaper();
        PageLayout page =
                job.getPrinter()
                        .createPageLayout(
                                paper,
                                bounds.widthMm() > bounds.heightMm()
                                        ? PageOrientation.LANDSCAPE
                                        : PageOrientation.PORTRAIT,
                                Printer.MarginType.HARDWARE_MINIMUM);
        if (bounds.widthMm() > page.getPrintableWidth() * POINT_MM
                || bounds.heightMm() > page.getPrintableHeight() * POINT_MM) {
            editor.refuse(
                    "The sheet does not fit this paper at full size. Choose larger paper, or export"
                            + " it");
            return;
        }
        if (job.printPage(page, fullSize(drawing.get(), bounds))) {
            job.endJob();
        } else {
            editor.refuse("The printer did not take the sheet");
        }
    }

    /** A point of paper is a pixel of the node that is printed. */
    private static Node fullSize(Drawing drawing, Bounds bounds) {
        double scale = 1 / POINT_MM;
        Canvas page = new Canvas(bounds.widthMm() * scale, bounds.heightMm() * scale);
        new DrawingPainter(
                        page.getGraphicsContext2D(),
                        scale,
                        -bounds.minXMm() * scale,
                        bounds.maxYMm() * scale)
                .paint(drawing);
        return page;
    }
}
