package haftline.ui.app;

/** What stands in the middle of the window. */
enum Showing {
    BOARD,
    LINE_UP,
    SHEET,
    TEMPLATES,
    BATCH,
    PRODUCTION,
    EXPORT,
    TAKE_OFF
}
