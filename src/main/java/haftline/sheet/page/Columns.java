package haftline.sheet.page;

import haftline.drawing.Element;
import haftline.drawing.Text;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Sections set in two columns with the largest type at which they fit. What a section holds stays
 * together, and in each column the order is the one given.
 */
final class Columns {
    /** Largest and least type, 1 being body text of 11 points. */
    private static final double LARGEST = 1.12;

    private static final double LEAST = 0.4;
    private static final double STEP = 0.01;

    private static final double GAP_MM = 9;

    /**
     * Between two sections, at least, at size 1; and what is added where there is room, at most.
     */
    private static final double BETWEEN_MM = 2.4;

    private static final double MOST_AIR_MM = 5;
    private static final double ROUNDING_MM = 1e-6;

    /** A maker finds things where they stood last time, unless that makes the type smaller yet. */
    private static final double WORTH_MOVING = 0.93;

    /** Where a section stands on every sheet, as far as there is room. */
    enum Side {
        LEFT,
        RIGHT,
        EITHER
    }

    /** What stays together, and where. */
    record Section(Side side, List<Block> blocks) {
        Section {
            blocks = List.copyOf(blocks);
        }
    }

    private final List<Section> sections;

    Columns(List<Section> sections) {
        this.sections = List.copyOf(sections);
    }

    /** A size of type, and the sections of the left column as bits, the first one the lowest. */
    record Fitted(double k, int left) {
        boolean isLeft(int section) {
            return (left >> section & 1) == 1;
        }
    }

    /**
     * Sets them.
     *
     * @return how
     */
    Fitted set(Ink ink, double x, double top, double width, double height) {
        double column = (width - GAP_MM) / 2;
        Fitted fitted = fitted(column, height);
        column(ink, x, top, column, height, fitted, true);
        column(ink, x + column + GAP_MM, top, column, height, fitted, false);
        return fitted;
    }

    /** How they would be set. */
    Fitted fittedIn(double width, double height) {
        return fitted((width - GAP_MM) / 2, height);
    }

    private Fitted fitted(double column, double height) {
        Optional<Fitted> usual = fitted(column, height, true);
        Fitted largest =
                fitted(column, height, false)
                        .orElseThrow(
                                () ->
                                        new IllegalStateException(
                                                "sheet: its words do not fit on the page"));
        return usual.filter(there -> there.k() >= WORTH_MOVING * largest.k()).orElse(largest);
    }

    private Optional<Fitted> fitted(double column, double height, boolean usual) {
        int fits = (int) Math.round((LARGEST - LEAST) / STEP) + 1;
        int tooLarge = -1;
        Optional<Fitted> best = Optional.empty();
        // Larger type never needs less room, but for a line that happens to break well.
        while (fits - tooLarge > 1) {
            int middle = (tooLarge + fits) / 2;
            double k = LARGEST - middle * STEP;
            int split = split(column, height, k, usual);
            if (split > 0) {
                best = Optional.of(new Fitted(k, split));
                fits = middle;
            } else {
                tooLarge = middle;
            }
        }
        return best;
    }

    /** The evenest split that fits, the first section on the left; 0 where none does. */
    private int split(double column, double height, double k, boolean usual) {
        int count = sections.size();
        double[] heights = new double[count];
        double sum = 0;
        for (int i = 0; i < count; i++) {
            heights[i] = heightOf(sections.get(i), column, k) + BETWEEN_MM * k;
            sum += heights[i];
        }
        if (!(sum <= 2 * (height + BETWEEN_MM * k))) {
            return 0;
        }
        int best = 0;
        double least = height + ROUNDING_MM;
        for (int bits = 1; bits < 1 << count; bits += 2) {
            if (usual && !isUsual(bits)) {
                continue;
            }
            double left = 0;
            for (int i = 0; i < count; i++) {
                left += (bits >> i & 1) * heights[i];
            }
            double taller = Math.max(left, sum - left) - BETWEEN_MM * k;
            if (taller < least) {
                least = taller;
                best = bits;
            }
        }
        return best;
    }

    private boolean isUsual(int bits) {
        for (int i = 0; i < sections.size(); i++) {
            Side side = sections.get(i).side();
            boolean left = (bits >> i & 1) == 1;
            if (side != Side.EITHER && left != (side == Side.LEFT)) {
                return false;
            }
        }
        return true;
    }

    /** Height of a section; not a number where something in it is wider than the column. */
    private static double heightOf(Section section, double column, double k) {
        Ink trial = new Ink();
        double y = 0;
        for (Block block : section.blocks()) {
            y -= block.set(trial, 0, y, column, k);
        }
        for (Element element : trial.elements()) {
            if (element instanceof Text text && isOver(text, column)) {
                return Double.NaN;
            }
        }
        return -y;
    }

    private static boolean isOver(Text text, double column) {
        double wide = Type.widthMm(text.string(), text.heightMm());
        double left =
                switch (text.anchor()) {
                    case START -> text.position().xMm();
                    case MIDDLE -> text.position().xMm() - wide / 2;
                    case END -> text.position().xMm() - wide;
                };
        return left < -ROUNDING_MM || left + wide > column + ROUNDING_MM;
    }

    private void column(
            Ink ink,
            double x,
            double top,
            double width,
            double height,
            Fitted fitted,
            boolean left) {
        List<Section> mine = new ArrayList<>();
        double free = height;
        for (int i = 0; i < sections.size(); i++) {
            if (fitted.isLeft(i) == left) {
                mine.add(sections.get(i));
                free -= heightOf(sections.get(i), width, fitted.k());
            }
        }
        double between =
                Math.min(
                        free / Math.max(1, mine.size() - 1), BETWEEN_MM * fitted.k() + MOST_AIR_MM);
        double y = top;
        for (Section section : mine) {
            for (Block block : section.blocks()) {
                y -= block.set(ink, x, y, width, fitted.k());
            }
            y -= between;
        }
    }
}
