package haftline.ui.templates;

import haftline.measure.Units;
import haftline.set.Workshop;
import haftline.ui.model.Setting;
import haftline.ui.theme.Palette;
import javafx.scene.canvas.GraphicsContext;

/** Small plain drawings of what settings mean, as they stand. Not to scale unless they say so. */
final class Sketches {
    /** Height of each, px. */
    static final double HEIGHT = 100;

    private Sketches() {}

    static void paint(
            GraphicsContext gc,
            double width,
            Setting.Picture picture,
            Workshop workshop,
            Palette palette,
            Units units) {
        SketchPen pen = new SketchPen(gc, palette, units);
        pen.clear(width, HEIGHT);
        switch (picture) {
            case TOOL -> ToolSketch.paint(pen, workshop.templates().cutting());
            case SHEET -> SheetSketch.paint(pen, workshop.templates().sheet());
            case CARDS -> GaugeSketches.cards(pen, workshop.templates().gauges());
            case REGISTER -> GaugeSketches.register(pen, workshop.templates().gauges());
            case COPYING -> CopyingSketch.paint(pen, workshop.templates().copying());
            case LETTERING -> FileSketches.lettering(pen, workshop.templates().lettering());
            case DXF -> FileSketches.dxf(pen, workshop.files().dxf());
            case PRINT -> FileSketches.print(pen, workshop.files());
        }
    }
}
