package haftline.ui.inspector;

/** Shows what is so now. */
interface Refreshed {
    /** Reads its figures again. */
    void refresh();
}
