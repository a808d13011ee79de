package haftline.sheet.page;

import haftline.drawing.Anchor;
import haftline.drawing.Drawing;
import haftline.drawing.Element;
import haftline.drawing.Group;
import haftline.drawing.Layer;
import haftline.drawing.Text;
import haftline.sheet.CareCard;
import java.util.List;

/** Care cards, as many as a page holds, with lines to cut along. */
public final class CarePages {
    private static final int COLUMNS = 2;

    /** As high as a card may be at least; the page is divided evenly. */
    private static final double LEAST_HIGH_MM = 62;

    private static final double PAD_MM = 5;
    private static final double NAME_MM = 4.4;
    private static final double IDENTITY_MM = 1.9;
    private static final double LINE_MM = 2.25;
    private static final double LARGEST_SIZE = 1.2;
    private static final double LEAST_SIZE = 0.5;
    private static final double STEP = 0.02;

    private CarePages() {}

    /**
     * One page of the same card.
     *
     * @param card what it says
     * @param field the paper's field
     * @return one page
     */
    public static List<Drawing> pages(CareCard card, Field field) {
        Ink ink = new Ink();
        int rows = (int) Math.floor(field.heightMm() / LEAST_HIGH_MM);
        double width = field.widthMm() / COLUMNS;
        double height = field.heightMm() / rows;
        double k = size(card, width - 2 * PAD_MM, height - 2 * PAD_MM);
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < COLUMNS; column++) {
                double left = column * width;
                double top = field.heightMm() - row * height;
                ink.box(Layer.CUT, left, top - height, left + width, top);
                card(ink, card, left + PAD_MM, top - PAD_MM, width - 2 * PAD_MM, k);
            }
        }
        return List.of(
                new Drawing(
                        card.name() + ", care cards",
                        "Care cards to cut apart.",
                        List.of(new Group("cards", ink.elements()))));
    }

    private static double size(CareCard card, double width, double height) {
        double k = LARGEST_SIZE;
        while (k > LEAST_SIZE && !fits(card, width, height, k)) {
            k -= STEP;
        }
        return k;
    }

    private static boolean fits(CareCard card, double width, double height, double k) {
        Ink trial = new Ink();
        double used = card(trial, card, 0, 0, width, k);
        for (Element element : trial.elements()) {
            if (element instanceof Text text
                    && Type.widthMm(text.string(), text.heightMm()) > width) {
                return false;
            }
        }
        return used <= height;
    }

    /** Sets one card; tells its height. */
    private static double card(
            Ink ink, CareCard card, double x, double top, double width, double k) {
        double y = top;
        double cap = NAME_MM * k;
        double fit = Math.min(1, width / Type.widthMm(card.name(), cap));
        y -= cap;
        ink.text(x, y, cap * Math.max(0.6, fit), Anchor.START, true, card.name());
        y -= 2.2 * k;
        for (String line : Type.wrapped(card.identity(), width, IDENTITY_MM * k)) {
            y -= IDENTITY_MM * k;
            ink.text(x, y, IDENTITY_MM * k, Anchor.START, false, line);
            y -= 0.8 * IDENTITY_MM * k;
        }
        y -= 1.2 * k;
        ink.wideRule(x, x + width, y);
        y -= 2.2 * k;
        for (String line : card.lines()) {
            y -= Blocks.hanging("–", false, line, 3.2, LINE_MM).set(ink, x, y, width, k);
        }
        return top - y;
    }
}
