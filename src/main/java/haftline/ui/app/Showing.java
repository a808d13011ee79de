package haftline.ui.app;

/** What stands in the middle of the window. */
enum Showing {
    BOARD(true),
    LINE_UP(false),
    SHEET(true),
    TEMPLATES(false),
    BATCH(false),
    PRODUCTION(false),
    EXPORT(false),
    TAKE_OFF(true);

    private final boolean isOfOnePiece;

    Showing(boolean isOfOnePiece) {
        this.isOfOnePiece = isOfOnePiece;
    }

    /** Whether it shows the piece in hand; all else shows the whole set. */
    boolean isOfOnePiece() {
        return isOfOnePiece;
    }
}
