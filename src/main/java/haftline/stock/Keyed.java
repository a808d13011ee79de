package haftline.stock;

/** Something a catalogue holds under a key. */
public interface Keyed {
    /**
     * The key: lower-case words joined by hyphens.
     *
     * @return such as {@code black-cherry}
     */
    String key();
}
