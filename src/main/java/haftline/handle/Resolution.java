package haftline.handle;

/** What comes of resolving a brief: a handle, or why there can be none. */
public sealed interface Resolution {
    /**
     * There is a handle.
     *
     * @param handle the handle
     */
    record Resolved(Handle handle) implements Resolution {}

    /**
     * No outline can be drawn.
     *
     * @param code stable code in words of the trade
     * @param figure the figure at fault
     * @param limit what it would have to reach
     * @param unit unit of both
     * @param message a sentence that says what is wrong and how to mend it
     */
    record Impossible(String code, double figure, double limit, String unit, String message)
            implements Resolution {}
}
