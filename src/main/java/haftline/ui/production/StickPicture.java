package haftline.ui.production;

import haftline.measure.NumberText;
import haftline.measure.Units;
import haftline.set.production.CutPlan;
import haftline.ui.model.PlanRows.Stick;
import haftline.ui.theme.Letters;
import haftline.ui.theme.Palette;
import javafx.geometry.VPos;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.layout.Region;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.TextAlignment;

/** A stick as it is cut: blanks with their letters and lengths, kerfs between, the offcut last. */
final class StickPicture extends Region {
    private static final double HEIGHT = 56;
    private static final double BAR_TOP = 20;
    private static final double BAR = 30;

    /** Left of the stick stands how many are cut so, right of it how long it is, px. */
    private static final double TIMES = 34;

    private static final double LENGTH = 74;

    /** Narrower than this, a blank has no room for its length, px. */
    private static final double LETTERED = 34;

    private static final Font MARK = Font.font(null, FontWeight.BOLD, 12);
    private static final Font SMALL = Font.font(11);

    private final Canvas canvas = new Canvas();

    StickPicture() {
        canvas.setManaged(false);
        getChildren().add(canvas);
        setMinHeight(HEIGHT);
        setPrefHeight(HEIGHT);
    }

    void show(Stick stick, double width, Units units, Palette palette) {
        canvas.setWidth(Math.max(1, width));
        canvas.setHeight(HEIGHT);
        GraphicsContext gc = canvas.getGraphicsContext2D();
        gc.clearRect(0, 0, width, HEIGHT);
        CutPlan.Cut cut = stick.cut();
        double scale = (width - TIMES - LENGTH) / stick.longestMm();
        gc.setTextBaseline(VPos.CENTER);
        gc.setFont(SMALL);
        gc.setTextAlign(TextAlignment.LEFT);
        gc.setFill(palette.soft());
        String across =
                ", "
                        + text(cut.stick().acrossMm(), units)
                        + " "
                        + units.symbol()
                        + " across"
                        + (cut.isBought() ? ", TO BUY" : ", on the rack");
        double room = width - TIMES - Letters.width(across, SMALL);
        gc.fillText(Letters.cut(stick.stock(), SMALL, room) + across, TIMES, 9);
        gc.setFill(palette.ink());
        gc.fillText(cut.times() + " ×", 0, BAR_TOP + BAR / 2);
        double end = TIMES + cut.stick().lengthMm() * scale;
        gc.fillText(
                text(cut.stick().lengthMm(), units) + " " + units.symbol(),
                end + 8,
                BAR_TOP + BAR / 2);
        // What lies between the blanks is the saw's.
        gc.setFill(palette.stop());
        gc.fillRect(TIMES, BAR_TOP, end - TIMES, BAR);
        double x = TIMES;
        int which = 0;
        for (CutPlan.Taken taken : cut.blanks()) {
            double wide = taken.blank().lengthMm() * scale;
            for (int n = 0; n < taken.count(); n++) {
                blank(gc, palette, x, wide, stick.marks().get(which), taken, units);
                x += wide + stick.kerfMm() * scale;
            }
            which++;
        }
        offcut(gc, palette, Math.min(x, end), end, text(cut.offcutMm(), units));
        gc.setStroke(palette.ink());
        gc.setLineWidth(1);
        gc.strokeRect(TIMES + 0.5, BAR_TOP + 0.5, end - TIMES - 1, BAR - 1);
    }

    private static void blank(
            GraphicsContext gc,
            Palette palette,
            double x,
            double wide,
            String mark,
            CutPlan.Taken taken,
            Units units) {
        gc.setFill(palette.grid());
        gc.fillRect(x, BAR_TOP, wide, BAR);
        gc.setFill(palette.ink());
        gc.setTextAlign(TextAlignment.CENTER);
        gc.setFont(MARK);
        boolean hasLength = wide > LETTERED;
        gc.fillText(mark, x + wide / 2, BAR_TOP + (hasLength ? 10 : BAR / 2));
        if (hasLength) {
            gc.setFont(SMALL);
            gc.fillText(
                    text(taken.blank().lengthMm(), units), x + wide / 2, BAR_TOP + 22, wide - 4);
        }
    }

    private static void offcut(
            GraphicsContext gc, Palette palette, double x, double end, String length) {
        double wide = end - x;
        gc.setFill(palette.panel());
        gc.fillRect(x, BAR_TOP, wide, BAR);
        gc.save();
        gc.beginPath();
        gc.rect(x, BAR_TOP, wide, BAR);
        gc.clip();
        gc.setStroke(palette.line());
        gc.setLineWidth(1);
        for (double at = x - BAR; at < end; at += 7) {
            gc.strokeLine(at, BAR_TOP + BAR, at + BAR, BAR_TOP);
        }
        gc.restore();
        if (wide > LETTERED + 20) {
            double half = 24;
            gc.setFill(palette.panel());
            gc.fillRect(x + wide / 2 - half, BAR_TOP + 7, 2 * half, BAR - 14);
            gc.setFill(palette.soft());
            gc.setFont(SMALL);
            gc.setTextAlign(TextAlignment.CENTER);
            gc.fillText(length, x + wide / 2, BAR_TOP + BAR / 2, 2 * half);
        }
    }

    private static String text(double mm, Units units) {
        return NumberText.upTo(mm / units.millimetres(), units == Units.MM ? 1 : 3);
    }
}
