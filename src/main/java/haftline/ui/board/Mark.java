package haftline.ui.board;

import java.util.Arrays;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.TextAlignment;

/**
 * One thing drawn on the board: how, where, and what rectangle it keeps to. It carries a digest of
 * all of it, so that two frames are compared without looking at a pixel.
 */
final class Mark {
    /** What is drawn; the numbers of a mark are read by it. */
    enum Kind {
        /** x, y, width, height, filled. */
        RECTANGLE,
        /** A path by {@link Mark#steps}, filled. */
        AREA,
        /** A path by {@link Mark#steps}, along it. */
        STROKE,
        /** x, y of the base line. */
        WORDS,
        /** x, y, width, height, and how opaque, 0 to 1. */
        PICTURE
    }

    static final byte MOVE = 0;
    static final byte LINE = 1;
    static final byte CLOSE = 2;

    /** Room for ends and joins outside of what is seen, px. */
    static final double BESIDE = 8;

    /** Room beside words, px. */
    static final double ASIDE = 2;

    /** A line moved by less than a sixteenth of a pixel looks as before: 1/px. */
    private static final double FINE = 16;

    private static final double[] SOLID = {};
    private static final byte[] NO_STEPS = {};
    private static final long PRIME = 0x9E3779B97F4A7C15L;

    final Kind kind;
    final Color colour;
    final double width;
    final double[] dashes;
    final double[] numbers;
    final byte[] steps;
    final Object what;
    private final boolean isRun;

    /** Whether nothing is seen through any of it. */
    private final boolean isOpaque;

    /** Of a picture: what each of its columns shows. */
    private final long[] columns;

    /** Digest of everything but the numbers. */
    private final long look;

    final double left;
    final double top;
    final double right;
    final double bottom;
    private final long digest;

    private Mark(
            Kind kind,
            Color colour,
            double width,
            double[] dashes,
            double[] numbers,
            byte[] steps,
            Object what,
            double[] box,
            long state,
            long... columns) {
        this.columns = columns;
        this.kind = kind;
        this.colour = colour;
        this.width = width;
        this.dashes = dashes;
        this.numbers = numbers;
        this.steps = steps;
        this.what = what;
        left = box[0];
        top = box[1];
        right = box[2];
        bottom = box[3];
        long d = mixed(kind.ordinal() + 1, state);
        d = mixed(d, colour == null ? 0 : colour.hashCode());
        d = mixed(d, Double.doubleToLongBits(width));
        d = mixed(d, Arrays.hashCode(dashes));
        look = d;
        d = mixed(d, Arrays.hashCode(steps));
        for (double number : numbers) {
            d = mixed(d, Double.doubleToLongBits(number));
        }
        digest = d;
        isRun = kind == Kind.STROKE && runs();
        isOpaque =
                kind == Kind.RECTANGLE && colour.isOpaque() || kind == Kind.PICTURE && state == 1;
    }

    static long mixed(long digest, long with) {
        long d = (digest ^ with) * PRIME;
        return d ^ d >>> 29;
    }

    static Mark rectangle(Color colour, double x, double y, double w, double h) {
        return new Mark(
                Kind.RECTANGLE,
                colour,
                0,
                SOLID,
                new double[] {x, y, w, h},
                NO_STEPS,
                null,
                new double[] {x, y, x + w, y + h},
                0);
    }

    static Mark area(Color colour, byte[] steps, double[] points) {
        return new Mark(Kind.AREA, colour, 0, SOLID, points, steps, null, box(points, 0), 0);
    }

    static Mark stroke(Color colour, double width, double[] dashes, byte[] steps, double[] points) {
        return new Mark(
                Kind.STROKE, colour, width, dashes, points, steps, null, box(points, width / 2), 0);
    }

    /** Letters keep to the box of their line; its height is well under twice the size. */
    static Mark words(
            String text,
            Font font,
            double wide,
            Color colour,
            TextAlignment align,
            double x,
            double y) {
        double from = align == TextAlignment.LEFT ? 0 : align == TextAlignment.CENTER ? 0.5 : 1;
        double size = font.getSize();
        return new Mark(
                Kind.WORDS,
                colour,
                0,
                SOLID,
                new double[] {x, y},
                NO_STEPS,
                new Lettered(text, font),
                new double[] {
                    x - from * wide - ASIDE,
                    y - 1.3 * size,
                    x + (1 - from) * wide + ASIDE,
                    y + 0.6 * size
                },
                mixed(text.hashCode(), font.hashCode()));
    }

    record Lettered(String text, Font font) {}

    /**
     * A picture, pixel on device pixel.
     *
     * @param pixels premultiplied ARGB, row by row
     * @param columns a number for each column of its pixels, another when they are other ones
     * @param alpha how opaque, 0 to 1
     * @param isOpaque whether nothing is seen through any of its pixels
     */
    static Mark picture(
            int[] pixels,
            long[] columns,
            double alpha,
            boolean isOpaque,
            double x,
            double y,
            double w,
            double h) {
        return new Mark(
                Kind.PICTURE,
                null,
                0,
                SOLID,
                new double[] {x, y, w, h, alpha},
                NO_STEPS,
                pixels,
                new double[] {x, y, x + w, y + h},
                isOpaque ? 1 : 0,
                columns);
    }

    private static double[] box(double[] points, double by) {
        double x0 = Double.POSITIVE_INFINITY;
        double y0 = Double.POSITIVE_INFINITY;
        double x1 = Double.NEGATIVE_INFINITY;
        double y1 = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < points.length; i += 2) {
            x0 = Math.min(x0, points[i]);
            x1 = Math.max(x1, points[i]);
            y0 = Math.min(y0, points[i + 1]);
            y1 = Math.max(y1, points[i + 1]);
        }
        return new double[] {x0 - by, y0 - by, x1 + by, y1 + by};
    }

    boolean isOpaque() {
        return isOpaque;
    }

    /** How many pixels a picture is wide. */
    int pictureColumns() {
        return columns.length;
    }

    /** Whether it goes from left to right all the way, so that a stretch can be looked at alone. */
    boolean isRun() {
        return isRun;
    }

    /**
     * Whether another is this one, but for the places of a line or what a picture's columns show.
     */
    boolean isLike(Mark other) {
        return look == other.look
                && Arrays.equals(steps, other.steps)
                && (kind != Kind.PICTURE
                        || digest == other.digest && columns.length == other.columns.length);
    }

    /** Whether another is this one; a picture may show something else. */
    boolean isSame(Mark other) {
        return digest == other.digest;
    }

    /** Whether an end of a line's stretches, by the number of its x, looks moved. */
    boolean isMoved(Mark before, int i) {
        return fine(numbers[i]) != fine(before.numbers[i])
                || fine(numbers[i + 1]) != fine(before.numbers[i + 1]);
    }

    private static long fine(double px) {
        return (long) Math.rint(px * FINE);
    }

    /** The first column of a picture that is not left of a place, px. */
    int columnFrom(double x) {
        return (int) Math.max(0, Math.floor((x - left) * columns.length / numbers[2]));
    }

    /** The column that is the first right of a place, px. */
    int columnTo(double x) {
        return (int) Math.min(columns.length, Math.ceil((x - left) * columns.length / numbers[2]));
    }

    boolean isColumnLike(Mark other, int column) {
        return columns[column] == other.columns[column];
    }

    /** How much of another's box lies in its own, 0 to 1. */
    double shareOf(Mark other) {
        double wide = Math.min(right, other.right) - Math.max(left, other.left);
        double tall = Math.min(bottom, other.bottom) - Math.max(top, other.top);
        return wide <= 0 || tall <= 0
                ? 0
                : wide * tall / ((other.right - other.left) * (other.bottom - other.top));
    }

    /** Whether nothing is seen through it within a rectangle. */
    boolean covers(double x0, double y0, double x1, double y1) {
        return isOpaque && left <= x0 && top <= y0 && right >= x1 && bottom >= y1;
    }

    /**
     * What is seen of it within a rectangle that its own box touches, as a number; 0 for nothing.
     *
     * @param x0 left, px
     * @param y0 top, px
     * @param x1 right, px
     * @param y1 bottom, px
     */
    long seen(double x0, double y0, double x1, double y1) {
        if (kind == Kind.PICTURE) {
            long d = digest;
            int to = columnTo(x1);
            for (int i = columnFrom(x0); i < to; i++) {
                d = mixed(d, columns[i]);
            }
            return d;
        }
        return isRun ? seenRun(x0, y0, x1, y1) : digest;
    }

    /** A line across the board often keeps to its place in some tiles and misses others. */
    private long seenRun(double x0, double y0, double x1, double y1) {
        double[] n = numbers;
        long d = look;
        double highest = Double.POSITIVE_INFINITY;
        double lowest = Double.NEGATIVE_INFINITY;
        double along = 0;
        int at = 0;
        for (byte step : steps) {
            if (step == MOVE) {
                along = 0;
            } else if (n[at] >= x0 - BESIDE && n[at - 2] <= x1 + BESIDE) {
                for (int i = at - 2; i <= at; i += 2) {
                    highest = Math.min(highest, n[i + 1]);
                    lowest = Math.max(lowest, n[i + 1]);
                    d = mixed(d, (fine(n[i]) << 32) + fine(n[i + 1]));
                }
                d = mixed(d, fine(along));
            }
            if (step == LINE && dashes.length > 0) {
                along += Math.hypot(n[at] - n[at - 2], n[at + 1] - n[at - 1]);
            }
            if (n[at] > x1 + BESIDE) {
                break;
            }
            at += 2;
        }
        return highest - width > y1 || lowest + width < y0 ? 0 : d;
    }

    /** Whether it goes from left to right all the way, so that a stretch can be drawn alone. */
    private boolean runs() {
        boolean isDashed = dashes.length > 0;
        int pieces = 0;
        double x = Double.NEGATIVE_INFINITY;
        int at = 0;
        for (byte step : steps) {
            pieces += step == MOVE ? 1 : 0;
            if (step == CLOSE || isDashed && pieces > 1) {
                return false;
            }
            at += 2;
            if (numbers[at - 2] < x) {
                return false;
            }
            x = numbers[at - 2];
        }
        return steps.length > 2;
    }
}
