package haftline.write.dxf;

import haftline.drawing.Layer;
import haftline.drawing.LineType;
import java.util.Locale;

/** How a layer and its lines are called and shown in a DXF file. */
final class DxfLayer {
    /** Line weights the format knows, in hundredths of a millimetre (published DXF reference). */
    private static final int[] WEIGHTS = {5, 9, 13, 15, 18, 20, 25, 30, 35, 40, 50, 53, 60, 70};

    private DxfLayer() {}

    /** Upper case: the oldest readers know no other. */
    static String name(Layer layer) {
        return layer.id().toUpperCase(Locale.ROOT);
    }

    /** Colour number: 1 red, 3 green, 4 cyan, 5 blue, 6 magenta, 7 black or white, 8 and 9 grey. */
    static int colour(Layer layer) {
        return switch (layer) {
            case CUT -> 1;
            case SCORE -> 5;
            case HIDDEN -> 3;
            case PART -> 4;
            case CENTRE -> 6;
            case HATCH -> 9;
            case DIMENSION -> 8;
            case OUTLINE, TEXT -> 7;
        };
    }

    /** The names that drawing programs know these line types by. */
    static String lineType(LineType type) {
        return switch (type) {
            case CONTINUOUS -> "CONTINUOUS";
            case DASHED -> "DASHED";
            case CENTRE -> "CENTER";
            case ADJACENT -> "PHANTOM";
        };
    }

    /** A line of text that shows the pattern. */
    static String description(LineType type) {
        return switch (type) {
            case CONTINUOUS -> "Solid line";
            case DASHED -> "Dashed __ __ __ __";
            case CENTRE -> "Centre ____ . ____ . ____";
            case ADJACENT -> "Adjacent part ____ . . ____ . . ____";
        };
    }

    /** The least weight in the list that is not thinner than the layer's lines. */
    static int weight(Layer layer) {
        for (int weight : WEIGHTS) {
            if (weight >= Math.round(layer.widthMm() * 100)) {
                return weight;
            }
        }
        return WEIGHTS[WEIGHTS.length - 1];
    }
}
