package haftline.ui.board;

import java.util.Arrays;

/**
 * Draws marks into the pixels of one tile: all but words, which are the toolkit's. Lines and areas
 * cover each pixel by its exact share.
 */
final class Brush {
    private final Coverage coverage = new Coverage();
    private int[] into = {};
    private int across;
    private int base;
    private int width;
    private int height;
    private double density;
    private double left;
    private double top;

    /** Pixels to be drawn on, of a picture of some width, row by row: a rectangle. */
    record Clip(int x, int y, int width, int height) {}

    /**
     * Draws from now on into these pixels.
     *
     * @param pixels premultiplied ARGB, row by row
     * @param wide their width
     * @param clip the ones that may be drawn on
     * @param x place of the left edge of all of them on the board, px
     * @param y place of their upper edge, px
     * @param perPx pixels of these on one of the board
     */
    void setOn(int[] pixels, int wide, Clip clip, double x, double y, double perPx) {
        into = pixels;
        across = wide;
        base = clip.y * wide + clip.x;
        width = clip.width;
        height = clip.height;
        left = x + clip.x / perPx;
        top = y + clip.y / perPx;
        density = perPx;
    }

    void clear() {
        for (int row = 0; row < height; row++) {
            Arrays.fill(into, at(row), at(row) + width, 0);
        }
    }

    private int at(int row) {
        return base + row * across;
    }

    /** Draws a mark, as far as it lies on the tile. */
    void draw(Mark mark) {
        switch (mark.kind) {
            case RECTANGLE -> rectangle(mark);
            case AREA -> area(mark);
            case STROKE -> stroke(mark);
            case PICTURE -> picture(mark);
            default -> throw new IllegalStateException(mark.kind.name());
        }
    }

    private double x(double boardX) {
        return (boardX - left) * density;
    }

    private double y(double boardY) {
        return (boardY - top) * density;
    }

    private static int opaque(Mark mark) {
        return (int) Math.round(256 * mark.colour.getOpacity());
    }

    private void rectangle(Mark mark) {
        double[] n = mark.numbers;
        double x0 = Math.max(0, x(n[0]));
        double x1 = Math.min(width, x(n[0] + n[2]));
        double y0 = Math.max(0, y(n[1]));
        double y1 = Math.min(height, y(n[1] + n[3]));
        if (x0 >= x1 || y0 >= y1) {
            return;
        }
        int colour = Tint.of(mark.colour);
        int opaque = opaque(mark);
        int firstWhole = (int) Math.ceil(x0);
        int endWhole = (int) x1;
        for (int row = (int) y0; row < y1; row++) {
            double share = opaque * (Math.min(y1, row + 1) - Math.max(y0, row));
            int at = at(row);
            if (firstWhole > endWhole) {
                cover(at + endWhole, colour, share * (x1 - x0));
                continue;
            }
            if (firstWhole > x0) {
                cover(at + firstWhole - 1, colour, share * (firstWhole - x0));
            }
            if (share == 256) {
                Arrays.fill(into, at + firstWhole, at + endWhole, colour);
            } else {
                for (int i = at + firstWhole; i < at + endWhole; i++) {
                    cover(i, colour, share);
                }
            }
            if (endWhole < x1) {
                cover(at + endWhole, colour, share * (x1 - endWhole));
            }
        }
    }

    private void cover(int at, int colour, double share) {
        into[at] = Tint.over(into[at], colour, (int) (share + 0.5));
    }

    private void area(Mark mark) {
        double[] n = mark.numbers;
        coverage.begin(width, height);
        int at = 0;
        int start = 0;
        for (byte step : mark.steps) {
            if (step == Mark.MOVE) {
                start = at;
            } else if (step == Mark.LINE) {
                coverage.edge(x(n[at - 2]), y(n[at - 1]), x(n[at]), y(n[at + 1]));
            } else {
                coverage.edge(x(n[at - 2]), y(n[at - 1]), x(n[start]), y(n[start + 1]));
            }
            at += step == Mark.CLOSE ? 0 : 2;
        }
        coverage.paint(Tint.of(mark.colour), opaque(mark), into, base, across);
    }

    private void stroke(Mark mark) {
        double[] n = mark.numbers;
        double[] dashes = Arrays.stream(mark.dashes).map(dash -> dash * density).toArray();
        coverage.begin(width, height);
        Stroker stroker = new Stroker(coverage, mark.width * density, dashes, width, height);
        int at = 0;
        int start = 0;
        for (byte step : mark.steps) {
            if (step == Mark.MOVE) {
                if (at > 0) {
                    stroker.finish(x(n[at - 2]), y(n[at - 1]));
                }
                start = at;
                stroker.begin();
            } else {
                int to = step == Mark.CLOSE ? start : at;
                stroker.line(x(n[at - 2]), y(n[at - 1]), x(n[to]), y(n[to + 1]));
            }
            if (step == Mark.CLOSE) {
                stroker.close(x(n[start]), y(n[start + 1]), x(n[start + 2]), y(n[start + 3]));
            } else {
                at += 2;
            }
        }
        stroker.finish(x(n[at - 2]), y(n[at - 1]));
        coverage.paint(Tint.of(mark.colour), opaque(mark), into, base, across);
    }

    /** Pixel on pixel: a picture has as many of them on a pixel of the board as the tile has. */
    private void picture(Mark mark) {
        int[] from = (int[]) mark.what;
        int wide = mark.pictureColumns();
        int aside = (int) Math.round(x(mark.left));
        int down = (int) Math.round(y(mark.top));
        int first = Math.max(0, aside);
        int end = Math.min(width, aside + wide);
        int share = (int) Math.round(256 * mark.numbers[4]);
        for (int row = Math.max(0, down);
                row < Math.min(height, down + from.length / wide) && first < end;
                row++) {
            int source = (row - down) * wide + first - aside;
            int at = at(row) + first;
            if (mark.isOpaque()) {
                System.arraycopy(from, source, into, at, end - first);
                continue;
            }
            for (int i = 0; i < end - first; i++) {
                into[at + i] = Tint.laid(into[at + i], from[source + i], share);
            }
        }
    }
}
