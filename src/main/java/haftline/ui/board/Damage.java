package haftline.ui.board;

import java.util.List;

/**
 * The part of a tile in which marks look different from those before: one rectangle, on the board,
 * px. It may be wider than need be, never narrower.
 */
final class Damage {
    /** Room beside an area, px: for a pixel that it covers in part. */
    private static final double EDGE = 1;

    private final double left;
    private final double top;
    private final double right;
    private final double bottom;
    private double fromX;
    private double fromY;
    private double toX;
    private double toY;

    /** Of a tile that is whole. */
    Damage(double left, double top, double right, double bottom) {
        this.left = left;
        this.top = top;
        this.right = right;
        this.bottom = bottom;
        mend();
    }

    /** Nothing looks different any more. */
    void mend() {
        fromX = right;
        fromY = bottom;
        toX = left;
        toY = top;
    }

    boolean isEmpty() {
        return fromX >= toX || fromY >= toY;
    }

    double fromX() {
        return fromX;
    }

    double fromY() {
        return fromY;
    }

    double toX() {
        return toX;
    }

    double toY() {
        return toY;
    }

    /** All of the tile. */
    void addAll() {
        add(left, top, right, bottom);
    }

    void add(Damage other) {
        if (!other.isEmpty()) {
            add(other.fromX, other.fromY, other.toX, other.toY);
        }
    }

    private void add(double x0, double y0, double x1, double y1) {
        if (x0 < right && x1 > left && y0 < bottom && y1 > top) {
            fromX = Math.min(fromX, Math.max(left, x0));
            fromY = Math.min(fromY, Math.max(top, y0));
            toX = Math.max(toX, Math.min(right, x1));
            toY = Math.max(toY, Math.min(bottom, y1));
        }
    }

    /**
     * What looks different when some marks are drawn in the place of others, each over the ones
     * before it.
     */
    void add(List<Mark> before, List<Mark> now) {
        int head = 0;
        int fewer = Math.min(before.size(), now.size());
        boolean isPaired = before.size() == now.size();
        while (head < fewer && (isPaired || before.get(head).isLike(now.get(head)))) {
            add(before.get(head), now.get(head));
            head++;
        }
        int tail = 0;
        while (head + tail < fewer) {
            Mark a = before.get(before.size() - 1 - tail);
            Mark b = now.get(now.size() - 1 - tail);
            if (!a.isLike(b)) {
                break;
            }
            add(a, b);
            tail++;
        }
        before.subList(head, before.size() - tail).forEach(this::addBox);
        now.subList(head, now.size() - tail).forEach(this::addBox);
    }

    private void add(Mark before, Mark now) {
        if (!before.isLike(now)) {
            addBox(before);
            addBox(now);
        } else if (now.kind == Mark.Kind.PICTURE) {
            addColumns(before, now);
        } else if (now.isRun()) {
            addRun(before, now);
        } else if (!before.isSame(now)) {
            addBox(before);
            addBox(now);
        }
    }

    private void addBox(Mark mark) {
        double by = mark.kind == Mark.Kind.STROKE ? Mark.BESIDE : EDGE;
        add(mark.left - by, mark.top - by, mark.right + by, mark.bottom + by);
    }

    /** From the first to the last column of a picture that shows something else. */
    private void addColumns(Mark before, Mark now) {
        int end = now.columnTo(right);
        int first = now.columnFrom(left);
        while (first < end && now.isColumnLike(before, first)) {
            first++;
        }
        while (end > first && now.isColumnLike(before, end - 1)) {
            end--;
        }
        if (first < end) {
            double wide = (now.right - now.left) / now.pictureColumns();
            add(now.left + first * wide, now.top, now.left + end * wide, now.bottom);
        }
    }

    /** The stretches of a line, within the tile, that have been moved. */
    private void addRun(Mark before, Mark now) {
        boolean isMoved = false;
        for (int i = 2; i < now.numbers.length; i += 2) {
            // A dash is where it is by all of the line before it.
            boolean isPast = isMoved && now.dashes.length > 0;
            boolean isMovedHere = now.isMoved(before, i - 2) || now.isMoved(before, i);
            isMoved |= isMovedHere;
            if (isMovedHere || isPast) {
                addStretch(before.numbers, i);
                addStretch(now.numbers, i);
            }
        }
    }

    private void addStretch(double[] n, int end) {
        add(
                Math.min(n[end - 2], n[end]) - Mark.BESIDE,
                Math.min(n[end - 1], n[end + 1]) - Mark.BESIDE,
                Math.max(n[end - 2], n[end]) + Mark.BESIDE,
                Math.max(n[end - 1], n[end + 1]) + Mark.BESIDE);
    }
}
