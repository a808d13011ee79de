package haftline.ui.board;

import haftline.handle.Handle;
import haftline.handle.Metals;
import haftline.handle.TangFit;
import haftline.measure.Units;
import haftline.parts.Kit;
import haftline.stock.Stock;
import haftline.ui.model.View;
import haftline.ui.theme.Palette;
import java.util.Arrays;
import java.util.Optional;

/** Draws a scene: the ground first, the ruler last. */
final class BoardPainter {
    /** Room beside the wood in the picture of pixels, mm. */
    private static final double BESIDE = 0.5;

    private int[] pixels = {};

    /** What each column of the pixels shows, as a number; empty while they show nothing. */
    private long[] looks = {};

    private long made;
    private Drawn drawn;

    /** How often the setting of what the pixels show has changed. */
    private long settings;

    private final CoarseGrain slices = new CoarseGrain(CoarseRaster.TALL);

    /** What the pixels show, so that they are made anew only where they must. */
    private record Drawn(Handle handle, Setting setting, boolean isQuick) {}

    /** All that a column of pixels shows beside what the outline gives. */
    private record Setting(
            Kit kit,
            Metals metals,
            Stock stock,
            TangFit fit,
            double tenonEndX,
            Palette palette,
            Optional<Units> squares,
            double scale,
            double startX,
            int width,
            int height,
            int axisRow) {}

    /**
     * Draws everything.
     *
     * @param ink what is drawn with
     * @param scene what is shown
     * @param width width of the board, px
     * @param height its height, px
     * @param view where the piece stands
     * @param density device pixels a pixel
     * @param dimensions the same scene's
     */
    void paint(
            Ink ink,
            BoardScene scene,
            double width,
            double height,
            View view,
            double density,
            DimensionPainter dimensions) {
        Sheet sheet = new Sheet(width, height);
        Pen pen = new Pen(ink);
        RulerPainter.ground(pen, scene, sheet, view);
        NodePainter.place(pen, scene, view, Sheet.RULER, sheet.curvesTop());
        boolean isLined = surface(ink, scene, sheet, view, density);
        new LinePainter(pen, scene, view, isLined).paint();
        OverlayPainter overlay = new OverlayPainter(pen, scene, view);
        overlay.comb();
        dimensions.paint();
        overlay.ghost();
        new CurvePainter(pen, scene, sheet, view).paint();
        NodePainter.paint(pen, scene, view);
        RulerPainter.ruler(pen, scene, sheet, view);
    }

    /** The piece itself; whether its outline is drawn already. */
    private boolean surface(Ink ink, BoardScene scene, Sheet sheet, View view, double density) {
        Handle handle = scene.handle();
        double face = view.px(handle.ferruleFaceX() - BESIDE);
        double end = view.px(handle.buttX() + handle.lengths().capMm() + BESIDE);
        double room = scene.room(view) + Math.ceil(BESIDE * view.scale());
        double axis = Math.round(view.axisY());
        // Out to the edges of the tiles that it touches: nothing need be drawn under it there.
        double left = Math.max(0, before(face, Tiles.WIDE));
        double right = Math.min(sheet.width(), behind(end, Tiles.WIDE));
        double top = Math.max(0, before(axis - room, Tiles.TALL));
        double bottom =
                Math.min(
                        sheet.height(),
                        behind(Math.min(sheet.curvesTop(), axis + room), Tiles.TALL));
        int width = (int) Math.ceil((right - left) * density);
        int height = (int) Math.ceil((bottom - top) * density);
        int axisRow = (int) Math.round((axis - top) * density);
        if (width <= 0 || height <= 0 || axisRow < 0 || axisRow > height) {
            return false;
        }
        double startX = view.mm(left + 0.5 / density);
        boolean isOpaque =
                scene.inHand()
                        && density == Math.rint(density)
                        && scene.chosen().isEmpty()
                        && scene.overlay().photograph() == 0;
        Setting now =
                new Setting(
                        handle.brief().kit(),
                        handle.brief().metals(),
                        handle.brief().stock(),
                        handle.fit(),
                        handle.tenonEndX(),
                        scene.palette(),
                        isOpaque ? Optional.of(scene.units()) : Optional.empty(),
                        view.scale() * density,
                        startX,
                        width,
                        height,
                        axisRow);
        Drawn wanted = new Drawn(handle, now, scene.inHand());
        if (!wanted.equals(drawn)) {
            if (drawn == null || !now.equals(drawn.setting())) {
                settings++;
            }
            if (pixels.length != width * height || looks.length != width) {
                pixels = new int[width * height];
                looks = new long[0];
            }
            PieceRaster.Size size = new PieceRaster.Size(width, height, axisRow);
            int hatched = (int) Math.max(1, Math.round(density));
            double devicePx = view.scale() * density;
            if (scene.inHand()) {
                Ground ground =
                        isOpaque
                                ? RulerPainter.ground(
                                        scene, view, left, top, width, height, (int) density)
                                : Ground.CLEAR;
                looks =
                        new CoarseRaster(handle, scene.palette(), slices, ground)
                                .paint(startX, devicePx, size, hatched, settings, pixels, looks);
            } else {
                slices.forget();
                new PieceRaster(handle, scene.palette(), PieceRaster.Below.SECTION)
                        .paint(startX, devicePx, size, hatched, pixels);
                looks = new long[width];
                Arrays.fill(looks, ++made);
            }
            drawn = wanted;
        }
        ink.add(
                Mark.picture(
                        pixels,
                        looks,
                        1 - scene.overlay().photograph(),
                        isOpaque,
                        left,
                        top,
                        width / density,
                        height / density));
        return isOpaque;
    }

    private static double before(double px, int step) {
        return Math.floor(px / step) * step;
    }

    private static double behind(double px, int step) {
        return Math.ceil(px / step) * step;
    }
}
