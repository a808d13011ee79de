package haftline.ui.board;

/**
 * Lines of a width as shapes: ends cut off straight, corners pointed, in dashes where they are
 * dashed.
 */
final class Stroker {
    /** A corner that would stick out by more than so many half widths is cut off. */
    private static final double LONGEST_CORNER = 10;

    /**
     * Cosine of a bend that is so slight that its inner side is no shorter than the line is wide.
     */
    private static final double SLIGHT = 0.9;

    private final Coverage coverage;
    private final double half;
    private final double left;
    private final double right;
    private final double top;
    private final double bottom;
    private final double[] dashes;
    private int dash;
    private double untilNext;

    /** Where the line goes before the corner that is next. */
    private double beforeX;

    private double beforeY;

    /** Whether ink comes up to that corner. */
    private boolean isOpen;

    /** The sides of the line where what is drawn of it ends. */
    private double leftX;

    private double leftY;
    private double rightX;
    private double rightY;

    /**
     * A pen.
     *
     * @param coverage what is drawn into
     * @param width of the line, px
     * @param dashes lengths of dashes and gaps in turn, px; none for a full line
     * @param wide width of what is drawn into, px
     * @param tall its height, px
     */
    Stroker(Coverage coverage, double width, double[] dashes, int wide, int tall) {
        this.coverage = coverage;
        this.dashes = dashes;
        half = width / 2;
        double reach = half * LONGEST_CORNER;
        left = -reach;
        top = -reach;
        right = wide + reach;
        bottom = tall + reach;
    }

    /** Begins a line; dashes begin anew. */
    void begin() {
        isOpen = false;
        dash = 0;
        untilNext = dashes.length == 0 ? Double.POSITIVE_INFINITY : dashes[0];
    }

    /** A stretch of the line, on from where it has come to. */
    void line(double x0, double y0, double x1, double y1) {
        boolean isSeen = !isBeside(x0, y0, x1, y1);
        if (!isSeen && !isOpen && dashes.length == 0) {
            return;
        }
        double length = length(x1 - x0, y1 - y0);
        if (length == 0) {
            return;
        }
        double dx = (x1 - x0) / length;
        double dy = (y1 - y0) / length;
        if (isOpen && isSeen) {
            corner(x0, y0, dx, dy);
        } else if (isOpen) {
            end(x0, y0);
        } else if (isSeen && isInk()) {
            start(x0, y0, dx, dy);
        }
        beforeX = dx;
        beforeY = dy;
        double at = 0;
        while (at + untilNext < length) {
            at += untilNext;
            if (isSeen && isInk()) {
                end(x0 + at * dx, y0 + at * dy);
            }
            dash++;
            untilNext = dashes[dash % dashes.length];
            if (isSeen && isInk()) {
                start(x0 + at * dx, y0 + at * dy, dx, dy);
            }
        }
        untilNext -= length - at;
        isOpen = isSeen && isInk();
    }

    /** Ends the line where it has come to. */
    void finish(double x, double y) {
        if (isOpen) {
            end(x, y);
        }
        isOpen = false;
    }

    /** Ends the line where it began, with a corner to its first stretch. */
    void close(double x, double y, double toX, double toY) {
        double length = length(toX - x, toY - y);
        if (isOpen && length > 0) {
            end(x, y);
            wedge(x, y, (toX - x) / length, (toY - y) / length);
        }
        isOpen = false;
    }

    /** Pixels are far from where squares overflow, which alone would ask for hypot. */
    private static double length(double x, double y) {
        return Math.sqrt(x * x + y * y);
    }

    private boolean isInk() {
        return dash % 2 == 0;
    }

    private boolean isBeside(double x0, double y0, double x1, double y1) {
        return x0 < left && x1 < left
                || x0 > right && x1 > right
                || y0 < top && y1 < top
                || y0 > bottom && y1 > bottom;
    }

    private void start(double x, double y, double dx, double dy) {
        leftX = x - half * dy;
        leftY = y + half * dx;
        rightX = x + half * dy;
        rightY = y - half * dx;
        coverage.edge(rightX, rightY, leftX, leftY);
    }

    private void end(double x, double y) {
        along(x, y, -half * beforeY, half * beforeX);
        coverage.edge(leftX, leftY, rightX, rightY);
    }

    /** On to a place, the left side so far from it. */
    private void along(double x, double y, double acrossX, double acrossY) {
        coverage.edge(leftX, leftY, x + acrossX, y + acrossY);
        coverage.edge(x - acrossX, y - acrossY, rightX, rightY);
        leftX = x + acrossX;
        leftY = y + acrossY;
        rightX = x - acrossX;
        rightY = y - acrossY;
    }

    /** Round a bend: both sides mitred where it is slight, else a piece ends and another begins. */
    private void corner(double x, double y, double dx, double dy) {
        double cosine = beforeX * dx + beforeY * dy;
        if (cosine > SLIGHT) {
            double reach = half / (1 + cosine);
            along(x, y, -reach * (beforeY + dy), reach * (beforeX + dx));
        } else {
            end(x, y);
            wedge(x, y, dx, dy);
            start(x, y, dx, dy);
        }
    }

    /** Fills the gap on the outer side of a bend, round the same way as the line itself. */
    private void wedge(double x, double y, double dx, double dy) {
        double turn = beforeX * dy - beforeY * dx;
        double out = turn > 0 ? -half : half;
        double ax = x - out * beforeY;
        double ay = y + out * beforeX;
        double bx = x - out * dy;
        double by = y + out * dx;
        double cosine = beforeX * dx + beforeY * dy;
        boolean isPointed = 2 <= LONGEST_CORNER * LONGEST_CORNER * (1 + cosine);
        double tipX = isPointed ? x - out * (beforeY + dy) / (1 + cosine) : ax;
        double tipY = isPointed ? y + out * (beforeX + dx) / (1 + cosine) : ay;
        if (turn > 0) {
            shape(x, y, bx, by, tipX, tipY, ax, ay);
        } else {
            shape(x, y, ax, ay, tipX, tipY, bx, by);
        }
    }

    private void shape(double... corners) {
        for (int i = 0; i < corners.length; i += 2) {
            int next = (i + 2) % corners.length;
            coverage.edge(corners[i], corners[i + 1], corners[next], corners[next + 1]);
        }
    }
}
