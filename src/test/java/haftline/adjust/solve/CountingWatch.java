package haftline.adjust.solve;

import haftline.adjust.Watch;

/** Waits for so many questions, then no longer. */
final class CountingWatch implements Watch {
    private final int patience;
    private int asked;

    CountingWatch(int patience) {
        this.patience = patience;
    }

    int asked() {
        return asked;
    }

    @Override
    public boolean isOver() {
        return ++asked > patience;
    }
}
