package haftline.sheet.page;

import haftline.drawing.Anchor;
import haftline.drawing.Drawing;
import haftline.drawing.Element;
import haftline.drawing.Group;
import haftline.drawing.Layer;
import haftline.drawing.Path;
import haftline.drawing.Text;
import haftline.drawing.Vertex;
import java.util.ArrayList;
import java.util.List;

/**
 * Pages of one size in a frame, filled from the top; what does not fit any more goes on the next.
 */
final class TextPages {
    /** Kept free within the frame, mm. */
    static final double PAD_MM = 5;

    static final double LEFT_MM = PAD_MM;

    private static final double HEAD_MM = 24;
    private static final double FOOT_MM = 16;
    private static final double NAME_MM = 5;
    private static final double NUMBER_MM = 30;
    private static final double SMALL_MM = 2.3;
    private static final double LINE_MM = 3.9;

    private final String title;
    private final String under;
    private final String right;
    private final String foot;
    private final double widthMm;
    private final double heightMm;
    private final List<List<Element>> pages = new ArrayList<>();
    private double y;

    /**
     * Pages with one heading and one foot.
     *
     * @param title in large letters
     * @param under below it
     * @param right at the right of the title
     * @param foot a sentence or two at the foot of every page
     * @param field the paper's field, all of which the frame takes
     */
    TextPages(String title, String under, String right, String foot, Field field) {
        this.title = title;
        this.under = under;
        this.right = right;
        this.foot = foot;
        this.widthMm = field.widthMm();
        this.heightMm = field.heightMm();
    }

    /** Right edge of what is written, mm. */
    double rightMm() {
        return widthMm - PAD_MM;
    }

    /** Where the next thing hangs from, mm from the page's foot. */
    double y() {
        return y;
    }

    /**
     * Sees to it that so much room is left, on a new page where it is not.
     *
     * @return whether a page was begun
     */
    boolean need(double wantedMm) {
        boolean isBegun = pages.isEmpty() || y - wantedMm < FOOT_MM + PAD_MM;
        if (isBegun) {
            pages.add(new ArrayList<>());
            y = heightMm - HEAD_MM;
        }
        return isBegun;
    }

    /** Room on a page between head and foot. */
    double roomMm() {
        return heightMm - HEAD_MM - FOOT_MM - PAD_MM;
    }

    void down(double mm) {
        y -= mm;
    }

    void add(Element element) {
        pages.get(pages.size() - 1).add(element);
    }

    void text(double x, double baseline, double height, Anchor anchor, String string) {
        if (!string.isEmpty()) {
            add(Text.level(Layer.TEXT, x, baseline, height, anchor, string));
        }
    }

    void rule(double fromX, double toX, double atY, Layer layer) {
        add(Path.line(layer, new Vertex(fromX, atY), new Vertex(toX, atY)));
    }

    void box(double left, double bottom, double width, double height, Layer layer) {
        add(rectangle(left, bottom, width, height, layer));
    }

    static Path rectangle(double left, double bottom, double width, double height, Layer layer) {
        return Path.from(left, bottom)
                .lineTo(left + width, bottom)
                .lineTo(left + width, bottom + height)
                .lineTo(left, bottom + height)
                .close(layer);
    }

    /** The pages as drawings, numbered. */
    List<Drawing> drawings() {
        List<Drawing> drawings = new ArrayList<>();
        for (int i = 0; i < pages.size(); i++) {
            String name = title + ", page " + (i + 1) + " of " + pages.size();
            drawings.add(
                    new Drawing(
                            name,
                            under,
                            List.of(
                                    new Group("frame", frame(i + 1)),
                                    new Group("page", pages.get(i)))));
        }
        return drawings;
    }

    private List<Element> frame(int number) {
        List<Element> out = new ArrayList<>();
        out.add(rectangle(0, 0, widthMm, heightMm, Layer.OUTLINE));
        double top = heightMm - PAD_MM - NAME_MM;
        double half = (rightMm() - LEFT_MM) * 0.66;
        out.add(
                Text.level(
                        Layer.TEXT,
                        LEFT_MM,
                        top,
                        NAME_MM,
                        Anchor.START,
                        Type.cut(title, half, NAME_MM)));
        out.add(Text.level(Layer.TEXT, rightMm(), top, 3, Anchor.END, right));
        double below = top - LINE_MM - 1.5;
        out.add(
                Text.level(
                        Layer.TEXT,
                        LEFT_MM,
                        below,
                        SMALL_MM,
                        Anchor.START,
                        Type.cut(under, rightMm() - LEFT_MM - NUMBER_MM, SMALL_MM)));
        out.add(
                Text.level(
                        Layer.TEXT,
                        rightMm(),
                        below,
                        SMALL_MM,
                        Anchor.END,
                        "page " + number + " of " + pages.size()));
        out.add(line(heightMm - HEAD_MM + 5));
        out.add(line(FOOT_MM));
        double at = FOOT_MM - LINE_MM;
        for (String each : Type.wrapped(foot, rightMm() - LEFT_MM, SMALL_MM)) {
            out.add(Text.level(Layer.TEXT, LEFT_MM, at, SMALL_MM, Anchor.START, each));
            at -= LINE_MM;
        }
        return out;
    }

    private Path line(double y) {
        return Path.line(Layer.OUTLINE, new Vertex(0, y), new Vertex(widthMm, y));
    }
}
