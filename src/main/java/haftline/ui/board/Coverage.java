package haftline.ui.board;

import java.util.Arrays;

/**
 * How much of each pixel shapes of straight edges cover, exactly, by the areas beside their edges
 * (Green's theorem, pixel by pixel). Shapes of one drawing that lie over one another, and go round
 * the same way, cover a pixel once.
 */
final class Coverage {
    /** Right of any column. */
    private static final int NONE = 1 << 24;

    /** In each row, how much more of a pixel is covered than of the one to the left of it. */
    private float[] steps = {};

    /** Of each row, the columns that edges have touched: from one, up to another. */
    private int[] first = {};

    private int[] end = {};
    private int width;
    private int height;
    private int top;
    private int bottom;

    /**
     * Begins a drawing.
     *
     * @param wide width of the pixels that are drawn into
     * @param tall their height
     */
    void begin(int wide, int tall) {
        width = wide;
        height = tall;
        top = tall;
        bottom = 0;
        if (steps.length < wide * tall) {
            steps = new float[wide * tall];
        }
        if (first.length < tall) {
            first = new int[tall];
            end = new int[tall];
            Arrays.fill(first, NONE);
        }
    }

    /**
     * An edge of a closed shape, in pixels from the upper left corner; it may begin and end
     * anywhere.
     */
    void edge(double x0, double y0, double x1, double y1) {
        boolean isDown = y0 < y1;
        double upperY = isDown ? y0 : y1;
        double y = Math.max(0, upperY);
        double lowerY = Math.min(height, isDown ? y1 : y0);
        if (y >= lowerY) {
            return;
        }
        double upperX = isDown ? x0 : x1;
        double aside = (x1 - x0) / (y1 - y0);
        int last = (int) Math.ceil(lowerY) - 1;
        top = Math.min(top, (int) y);
        bottom = Math.max(bottom, last + 1);
        double x = upperX + (y - upperY) * aside;
        for (int row = (int) y; row <= last; row++) {
            double nextY = Math.min(row + 1, lowerY);
            double nextX = upperX + (nextY - upperY) * aside;
            double tall = isDown ? nextY - y : y - nextY;
            if (x < nextX) {
                within(row, x, nextX, tall);
            } else {
                within(row, nextX, x, tall);
            }
            x = nextX;
            y = nextY;
        }
    }

    /** A stretch of an edge in one row, from left to right; it covers what lies right of it. */
    private void within(int row, double x0, double x1, double tall) {
        double left = x0;
        double right = x1;
        double rest = tall;
        if (right >= width) {
            end[row] = width;
            if (left >= width) {
                return;
            }
            rest *= (width - left) / (right - left);
            right = width;
        }
        if (left < 0) {
            double beside = right <= 0 ? rest : rest * left / (left - right);
            steps[row * width] += beside;
            first[row] = 0;
            end[row] = Math.max(end[row], 1);
            if (right <= 0) {
                return;
            }
            rest -= beside;
            left = 0;
        }
        spread(row, left, right, rest);
    }

    private void spread(int row, double left, double right, double tall) {
        int from = (int) left;
        int last = Math.min(width - 1, (int) right);
        first[row] = Math.min(first[row], from);
        end[row] = Math.max(end[row], Math.min(width, last + 2));
        int at = row * width + from;
        double covered;
        if (from == last) {
            covered = tall * (from + 1 - (left + right) / 2);
            steps[at] += covered;
        } else {
            double perPx = tall / (right - left);
            double beyond = from + 1 - left;
            covered = perPx * beyond * beyond / 2;
            steps[at] += covered;
            for (int i = from + 1; i < last; i++) {
                double there = perPx * (i + 0.5 - left);
                steps[++at] += there - covered;
                covered = there;
            }
            double over = right - last;
            double there = tall - perPx * over * over / 2;
            steps[++at] += there - covered;
            covered = there;
        }
        if (last + 1 < width) {
            steps[at + 1] += tall - covered;
        }
    }

    /**
     * Puts a colour on what is covered, and ends the drawing.
     *
     * @param colour as in {@link Tint}
     * @param opaque how opaque, 0 to 256
     * @param into premultiplied pixels, row by row
     * @param base where in them the drawing's upper left corner lies
     * @param across how far it is from one row to the next
     */
    void paint(int colour, int opaque, int[] into, int base, int across) {
        for (int row = top; row < bottom; row++) {
            float sum = 0;
            int stop = row * width + end[row];
            int to = base + row * across + first[row];
            for (int at = row * width + first[row]; at < stop; at++, to++) {
                sum += steps[at];
                steps[at] = 0;
                int share = (int) (Math.min(1, Math.abs(sum)) * opaque + 0.5f);
                if (share > 0) {
                    into[to] = Tint.over(into[to], colour, share);
                }
            }
            first[row] = NONE;
            end[row] = 0;
        }
    }
}
