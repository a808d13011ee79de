package haftline.ui.board;

import java.util.Arrays;

/**
 * What is seen beside a piece in its picture: nothing, or squared paper, so that nothing need be
 * drawn under the picture.
 */
final class Ground {
    /** Nothing: what lies under the picture is seen. */
    static final Ground CLEAR = new Ground(new int[0], 0, new boolean[0]);

    private final int[] between;
    private final int[] along;
    private final boolean[] isLine;

    private Ground(int[] between, int line, boolean[] isLine) {
        this.between = between;
        this.isLine = isLine;
        along = new int[between.length];
        Arrays.fill(along, line);
    }

    /**
     * Squared paper.
     *
     * @param paper its colour, as in {@link Tint}
     * @param line colour of its lines
     * @param isUpright of each column of pixels whether it is a line
     * @param isLevel of each row
     */
    static Ground squared(int paper, int line, boolean[] isUpright, boolean[] isLevel) {
        int[] row = new int[isUpright.length];
        for (int i = 0; i < row.length; i++) {
            row[i] = isUpright[i] ? line : paper;
        }
        return new Ground(row, line, isLevel);
    }

    /** Whether nothing is seen through it. */
    boolean isOpaque() {
        return isLine.length > 0;
    }

    /** Puts it into a stretch of a row. */
    void fill(int row, int from, int to, int[] into, int width) {
        int at = row * width;
        if (isOpaque()) {
            System.arraycopy(isLine[row] ? along : between, from, into, at + from, to - from);
        } else {
            Arrays.fill(into, at + from, at + to, 0);
        }
    }

    /** A pixel of which a colour covers a share of 0 to 1. */
    int under(int colour, float share, int row, int column) {
        if (!isOpaque()) {
            return Tint.covering(colour, share);
        }
        return Tint.mix((isLine[row] ? along : between)[column], colour, (int) (256 * share));
    }
}
