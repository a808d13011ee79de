package haftline.ui.board;

import haftline.stock.Stock;

/**
 * The grain of a piece while a hand drags it. It is worked out for a slice once and then stretched
 * with it, until it would be stretched too far: grain costs more than all else in a picture.
 */
final class CoarseGrain {
    /** How far a slice may have grown or shrunk before its grain is worked out anew. */
    private static final float STRETCH = 0.15f;

    private final int tall;

    private Stock stock;
    private float startX;
    private float step;
    private int[][] slices = {};
    private float[] radii = {};

    /**
     * No grain yet.
     *
     * @param tall rows of pixels that have one colour
     */
    CoarseGrain(int tall) {
        this.tall = tall;
    }

    /** Forgets all: what is dragged next begins with grain that is not stretched. */
    void forget() {
        slices = new int[0][];
        radii = new float[0];
    }

    /**
     * Forgets all that was worked out for another stock or another place of the columns, or for a
     * slice that has grown or shrunk too far: beside each other all are stretched alike.
     */
    void keepTo(Stock stock, Columns columns) {
        if (!stock.equals(this.stock)
                || columns.startX != startX
                || columns.step != step
                || columns.count != slices.length
                || isOutgrown(columns)) {
            this.stock = stock;
            startX = columns.startX;
            step = columns.step;
            slices = new int[columns.count][];
            radii = new float[columns.count];
        }
    }

    private boolean isOutgrown(Columns columns) {
        for (int i = 0; i < radii.length; i++) {
            if (radii[i] > 0 && Math.abs(columns.wood[i] - radii[i]) > STRETCH * radii[i]) {
                return true;
            }
        }
        return false;
    }

    /**
     * The colours of a slice from the axis outwards, each for the same share of the radius.
     *
     * @param column its column
     * @param radius its radius, mm
     * @param grain of the stock, for this thread
     */
    int[] of(int column, float radius, Grain grain) {
        if (slices[column] == null) {
            slices[column] = slice(startX + column * step, radius, grain);
            radii[column] = radius;
        }
        return slices[column];
    }

    private int[] slice(float x, float radius, Grain grain) {
        int[] slice = new int[Math.max(1, Math.round(radius / (step * tall)))];
        grain.slice(x);
        for (int i = 0; i < slice.length; i++) {
            float v = (i + 0.5f) / slice.length;
            slice[i] = grain.at(v * radius, (float) Math.sqrt(1 - v * v) * radius);
        }
        return slice;
    }
}
