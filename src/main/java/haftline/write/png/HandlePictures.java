package haftline.write.png;

import haftline.drawing.Anchor;
import haftline.handle.Handle;
import haftline.measure.Checks;
import haftline.measure.LengthText;
import haftline.measure.Units;
import haftline.parts.Blade;
import haftline.write.lettering.Lettering;
import haftline.write.lettering.Lettering.Placed;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Pictures of finished pieces, side by side at one scale: the turned surface shaded in the stock's
 * colours with its grain, ferrule and cap in their metals, the blade as its sizes tell it. The same
 * bytes from run to run on one Java; no screen is wanted. docs/formats/png.md describes the file.
 */
public final class HandlePictures {
    private static final int LEAST_WIDTH = 320;
    private static final int GREATEST_WIDTH = 8000;

    /** Some pieces fill a sheet better in two columns or more; this is height over width. */
    private static final double SHEET_FORM = 1.5;

    private static final double MARGIN_MM = 11;
    private static final double COLUMN_GAP_MM = 12;
    private static final double ROW_GAP_MM = 8;
    private static final double TITLE_MM = 3.6;
    private static final double TITLE_ROOM_MM = 10;
    private static final double NAME_MM = 2.2;
    private static final double NOTE_MM = 1.55;
    private static final double CAPTION_DROP_MM = 7.5;
    private static final double CAPTION_ROOM_MM = 4;
    private static final double FOOT_ROOM_MM = 10;
    private static final double BAR_MM = 50;
    private static final double BAR_INCHES = 2;
    private static final double SHADOW_RIGHT_MM = 1.2;
    private static final double SHADOW_DOWN_MM = 3.4;
    private static final double SHADOW_BLUR_MM = 1.9;
    private static final double SHADOW_DEPTH = 0.5;
    private static final Rgb PAPER = Rgb.of(0xF7F3E9);
    private static final Rgb SHADOW = Rgb.of(0x6B5B4A);
    private static final Color INK = new Color(0x2F2B25);
    private static final Color SOFT = new Color(0x6E6759);

    private final LengthText lengths;
    private final List<PieceModel> pieces;
    private final String title;
    private final int columns;
    private final double leftMm;
    private final double cellWidthMm;
    private final double[] axesMm;
    private final double[] captionsMm;
    private final double dotsPerMm;
    private final int width;
    private final int height;

    private HandlePictures(String title, List<Handle> handles, int widthPx, Units units) {
        this.lengths = new LengthText(units);
        Checks.within("picture width", widthPx, LEAST_WIDTH, GREATEST_WIDTH);
        if (handles.isEmpty()) {
            throw new IllegalArgumentException("picture: expected at least one handle");
        }
        this.title = title;
        pieces = handles.stream().map(PieceModel::of).toList();
        leftMm = -most(pieces, piece -> -piece.leftX());
        cellWidthMm = most(pieces, PieceModel::rightX) - leftMm;
        columns = columns();
        double widthMm = 2 * MARGIN_MM + columns * (cellWidthMm + COLUMN_GAP_MM) - COLUMN_GAP_MM;
        dotsPerMm = widthPx / widthMm;
        width = widthPx;
        int rows = (pieces.size() + columns - 1) / columns;
        axesMm = new double[rows];
        captionsMm = new double[rows];
        double y = MARGIN_MM + (title.isBlank() ? 0 : TITLE_ROOM_MM);
        for (int row = 0; row < rows; row++) {
            List<PieceModel> side =
                    pieces.subList(row * columns, Math.min(pieces.size(), (row + 1) * columns));
            axesMm[row] = y + most(side, PieceModel::aboveMm);
            captionsMm[row] = axesMm[row] + most(side, PieceModel::belowMm) + CAPTION_DROP_MM;
            y = captionsMm[row] + CAPTION_ROOM_MM + ROW_GAP_MM;
        }
        height = (int) Math.ceil((y + FOOT_ROOM_MM) * dotsPerMm);
    }

    private int columns() {
        double high =
                most(pieces, PieceModel::aboveMm)
                        + most(pieces, PieceModel::belowMm)
                        + CAPTION_DROP_MM
                        + CAPTION_ROOM_MM
                        + ROW_GAP_MM;
        double wanted =
                Math.sqrt(pieces.size() * high / (SHEET_FORM * (cellWidthMm + COLUMN_GAP_MM)));
        return (int) Math.max(1, Math.min(pieces.size(), Math.round(wanted)));
    }

    private static double most(List<PieceModel> pieces, ToDoubleFunction<PieceModel> of) {
        return pieces.stream().mapToDouble(of).max().orElseThrow();
    }

    /**
     * A picture of one piece.
     *
     * @param handle the piece
     * @param widthPx dots across, {@value #LEAST_WIDTH} to {@value #GREATEST_WIDTH}
     * @param units unit of the lengths in its words
     * @return the picture
     * @throws IllegalArgumentException where the width is out of range
     */
    public static Picture one(Handle handle, int widthPx, Units units) {
        return new HandlePictures("", List.of(handle), widthPx, units).picture();
    }

    /**
     * A picture of a set, all pieces at one scale.
     *
     * @param title what stands above, may be empty
     * @param handles the pieces, from the top
     * @param widthPx dots across, {@value #LEAST_WIDTH} to {@value #GREATEST_WIDTH}
     * @param units unit of the lengths in its words
     * @return the picture
     * @throws IllegalArgumentException where the width is out of range or there is no piece
     */
    public static Picture set(String title, List<Handle> handles, int widthPx, Units units) {
        return new HandlePictures(title, handles, widthPx, units).picture();
    }

    private Picture picture() {
        PieceRaster raster = new PieceRaster(width, height, dotsPerMm);
        for (int i = 0; i < pieces.size(); i++) {
            raster.draw(pieces.get(i), px(shoulderMm(i)), px(axisMm(i)));
        }
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        float[] shadow = shadow(raster);
        for (int row = 0; row < height; row++) {
            for (int column = 0; column < width; column++) {
                Rgb paper =
                        paper(column, row).mix(SHADOW, SHADOW_DEPTH * shadow[row * width + column]);
                image.setRGB(column, row, raster.over(paper, column, row).srgb());
            }
        }
        letter(image);
        int[] rgb = image.getRGB(0, 0, width, height, null, 0, width);
        return new Picture(PngFile.of(rgb, width, height, dotsPerMm), width, height, dotsPerMm);
    }

    private double shoulderMm(int piece) {
        return MARGIN_MM + piece % columns * (cellWidthMm + COLUMN_GAP_MM) - leftMm;
    }

    private double axisMm(int piece) {
        return axesMm[piece / columns];
    }

    private double px(double mm) {
        return mm * dotsPerMm;
    }

    /** Paper, a little darker towards the corners. */
    private Rgb paper(int column, int row) {
        double x = (column + 0.5) / width - 0.45;
        double y = (row + 0.5) / height - 0.4;
        return PAPER.times(1 - 0.13 * (x * x + y * y));
    }

    /** Cover of the pieces, moved and blurred by three boxes, which are nearly a bell. */
    private float[] shadow(PieceRaster raster) {
        int right = (int) Math.round(px(SHADOW_RIGHT_MM));
        int down = (int) Math.round(px(SHADOW_DOWN_MM));
        float[] shadow = new float[width * height];
        for (int row = down; row < height; row++) {
            for (int column = right; column < width; column++) {
                shadow[row * width + column] = raster.cover(column - right, row - down);
            }
        }
        int reach = (int) Math.max(1, Math.round(px(SHADOW_BLUR_MM)));
        for (int pass = 0; pass < 3; pass++) {
            for (int row = 0; row < height; row++) {
                blur(shadow, row * width, 1, width, reach);
            }
            for (int column = 0; column < width; column++) {
                blur(shadow, column, width, height, reach);
            }
        }
        return shadow;
    }

    private static void blur(float[] values, int start, int step, int count, int reach) {
        double[] sums = new double[count + 1];
        for (int i = 0; i < count; i++) {
            sums[i + 1] = sums[i] + values[start + i * step];
        }
        for (int i = 0; i < count; i++) {
            int from = Math.max(0, i - reach);
            int to = Math.min(count, i + reach + 1);
            values[start + i * step] = (float) ((sums[to] - sums[from]) / (2 * reach + 1));
        }
    }

    private void letter(BufferedImage image) {
        Graphics2D on = image.createGraphics();
        on.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        on.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        if (!title.isBlank()) {
            write(on, INK, title, MARGIN_MM, MARGIN_MM + TITLE_MM * 0.6, TITLE_MM, Anchor.START);
        }
        for (int i = 0; i < pieces.size(); i++) {
            Handle handle = pieces.get(i).handle();
            double x = shoulderMm(i);
            double y = captionsMm[i / columns];
            write(on, INK, handle.name(), x, y, NAME_MM, Anchor.START);
            write(on, SOFT, note(handle), x, y + 3.2, NOTE_MM, Anchor.START);
        }
        double y = height / dotsPerMm - MARGIN_MM * 0.7;
        double right = width / dotsPerMm - MARGIN_MM;
        boolean isInch = lengths.units() == Units.INCH;
        double bar = isInch ? BAR_INCHES * Units.INCH.millimetres() : BAR_MM;
        // Ticks at centimetres or half inches.
        bar(on, right - bar, right, y, isInch ? 4 : 5);
        write(on, SOFT, "blades drawn from their sizes alone", MARGIN_MM, y, NOTE_MM, Anchor.START);
        on.dispose();
    }

    private String note(Handle handle) {
        Blade blade = handle.brief().kit().blade();
        return handle.brief().stock().name()
                + ", handle "
                + shown(handle.lengths().overallMm())
                + ", \u2300 "
                + shown(2 * handle.outline().greatest().r())
                + "; blade "
                + shown(blade.length().mean());
    }

    private String shown(double mm) {
        return lengths.dimension(mm, 1) + " " + lengths.unit();
    }

    /** 50 mm or two inches of the pieces' own scale. */
    private void bar(Graphics2D on, double fromMm, double toMm, double yMm, int parts) {
        on.setColor(SOFT);
        double thick = 0.25;
        on.fill(rectangle(fromMm, yMm - thick / 2, toMm, yMm + thick / 2));
        for (int i = 0; i <= parts; i++) {
            double x = fromMm + (toMm - fromMm) * i / parts;
            double tick = i % parts == 0 ? 1.4 : 0.7;
            on.fill(rectangle(x - thick / 2, yMm - tick, x + thick / 2, yMm));
        }
        String words = lengths.units() == Units.INCH ? "2 in" : "50 mm";
        write(on, SOFT, words, (fromMm + toMm) / 2, yMm - 1.6, NOTE_MM, Anchor.MIDDLE);
    }

    private Rectangle2D rectangle(double left, double top, double right, double bottom) {
        return new Rectangle2D.Double(px(left), px(top), px(right - left), px(bottom - top));
    }

    private void write(
            Graphics2D on,
            Color colour,
            String text,
            double xMm,
            double yMm,
            double heightMm,
            Anchor anchor) {
        Lettering lettering = Lettering.font();
        double sizePx = px(heightMm / lettering.capitalPerEm());
        double share = anchor == Anchor.MIDDLE ? 0.5 : 0;
        double start = px(xMm) - share * sizePx * lettering.widthEm(text);
        on.setColor(colour);
        for (Placed placed : lettering.laid(text)) {
            AffineTransform at =
                    new AffineTransform(
                            sizePx, 0, 0, -sizePx, start + placed.xEm() * sizePx, px(yMm));
            on.fill(lettering.outline(placed.codePoint()).createTransformedShape(at));
        }
    }
}
