package haftline.write.pdf;

import haftline.drawing.Anchor;
import haftline.drawing.Element;
import haftline.drawing.Layer;
import haftline.drawing.Path;
import haftline.drawing.Text;
import haftline.drawing.Vertex;
import haftline.measure.NumberText;
import haftline.write.lettering.Lettering;
import java.util.ArrayList;
import java.util.List;

/**
 * The check bars and the label of a sheet, in mm from its lower left corner.
 *
 * @param sheet the sheet
 */
record SheetBars(Sheet sheet) {
    static final double LETTER_MM = 1.7;

    private static final double HUNDRED_MM = 100;
    private static final double FOUR_INCHES_MM = 101.6;
    private static final double TICK_MM = 2.4;

    /** From the field to the bars, the middle of the strip. */
    private static final double BAR_MM = 2.8;

    private static final double LABEL_GAP_MM = 13;

    /** A bar along each edge of the field: both lengths both ways. */
    List<Element> bars() {
        List<Element> bars = new ArrayList<>();
        double x = sheet.fieldLeftMm();
        double y = sheet.fieldBottomMm();
        level(bars, x, y - BAR_MM, HUNDRED_MM, "100 mm");
        level(bars, x, topBarMm(), FOUR_INCHES_MM, "4 in");
        upright(bars, x - BAR_MM, y, HUNDRED_MM, "100 mm");
        upright(bars, x + sheet.fieldWidthMm() + BAR_MM, y, FOUR_INCHES_MM, "4 in");
        return bars;
    }

    private double topBarMm() {
        return sheet.fieldBottomMm() + sheet.fieldHeightMm() + BAR_MM;
    }

    private void level(List<Element> bars, double x, double y, double length, String text) {
        double end = x + length * sheet.factorX();
        bars.add(line(x, y, end, y));
        bars.add(line(x, y - TICK_MM / 2, x, y + TICK_MM / 2));
        bars.add(line(end, y - TICK_MM / 2, end, y + TICK_MM / 2));
        bars.add(text(end + 1, y - LETTER_MM / 2, 0, text));
    }

    private void upright(List<Element> bars, double x, double y, double length, String text) {
        double end = y + length * sheet.factorY();
        bars.add(line(x, y, x, end));
        bars.add(line(x - TICK_MM / 2, y, x + TICK_MM / 2, y));
        bars.add(line(x - TICK_MM / 2, end, x + TICK_MM / 2, end));
        bars.add(text(x + LETTER_MM / 2, end + 1, 90, text));
    }

    private static Path line(double x0, double y0, double x1, double y1) {
        return Path.line(Layer.DIMENSION, new Vertex(x0, y0), new Vertex(x1, y1));
    }

    private static Text text(double x, double y, double rotationDeg, String text) {
        return new Text(Layer.TEXT, new Vertex(x, y), LETTER_MM, Anchor.START, rotationDeg, text);
    }

    /** The label of a sheet that is the only one of its drawing. */
    List<Element> label(String title) {
        return label("One sheet. ", title);
    }

    /** Number of the sheet and how to print it; above, its title or what is corrected. */
    List<Element> label(String number, String title) {
        double x = sheet.fieldLeftMm() + FOUR_INCHES_MM * sheet.factorX() + LABEL_GAP_MM;
        double room = sheet.fieldLeftMm() + sheet.fieldWidthMm() - x;
        boolean isCorrected = sheet.factorX() != 1 || sheet.factorY() != 1;
        String above =
                isCorrected
                        ? "Corrected, bars too: level x "
                                + NumberText.fixed(sheet.factorX(), 4)
                                + ", upright x "
                                + NumberText.fixed(sheet.factorY(), 4)
                        : title;
        double low = LETTER_MM / 2;
        return List.of(
                text(
                        x,
                        sheet.fieldBottomMm() - BAR_MM - low,
                        0,
                        fitted(number + "Print at 100 %, measure the bars.", room)),
                text(x, topBarMm() - low, 0, fitted(above, room)));
    }

    /**
     * As much of a text as there is room for, by the font's own widths. What follows its last
     * comma, a page's number among others, is kept where it leaves half of the room to the rest.
     */
    private static String fitted(String text, double roomMm) {
        int comma = text.lastIndexOf(", ");
        String end = comma < 0 ? "" : text.substring(comma);
        String kept = widthMm(end) > roomMm / 2 ? "" : end;
        String start = text.substring(0, text.length() - kept.length());
        String shown = text;
        int room = start.codePointCount(0, start.length());
        while (room > 1 && widthMm(shown) > roomMm) {
            room--;
            shown = start.substring(0, start.offsetByCodePoints(0, room - 1)) + "\u2026" + kept;
        }
        return shown;
    }

    private static double widthMm(String text) {
        Lettering font = Lettering.font();
        return font.widthEm(text) * LETTER_MM / font.capitalPerEm();
    }
}
