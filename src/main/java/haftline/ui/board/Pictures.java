package haftline.ui.board;

import haftline.handle.Handle;
import haftline.ui.theme.Palette;
import java.util.LinkedHashMap;
import java.util.Map;
import javafx.scene.image.Image;

/** The pictures of pieces that were looked at last, so that none is painted twice. */
public final class Pictures {
    private final Map<Key, Image> kept;
    private int painted;

    /** A handle counts by identity: one that was worked out anew is another, and cheap to tell. */
    private record Key(Handle handle, Palette palette, double scale) {
        @Override
        public boolean equals(Object other) {
            return other instanceof Key key
                    && handle == key.handle
                    && palette == key.palette
                    && scale == key.scale;
        }

        @Override
        public int hashCode() {
            return System.identityHashCode(handle);
        }
    }

    /**
     * Pictures, none yet.
     *
     * @param most how many are kept
     */
    public Pictures(int most) {
        // In the order of use: the one that was not looked at for longest goes first.
        kept =
                new LinkedHashMap<>(2 * most, 0.75f, true) {
                    private static final long serialVersionUID = 1;

                    @Override
                    protected boolean removeEldestEntry(Map.Entry<Key, Image> eldest) {
                        return size() > most;
                    }
                };
    }

    /**
     * The picture of a piece, as {@link PiecePicture#of}.
     *
     * @param handle the handle
     * @param palette colours of the theme
     * @param scale device pixels a millimetre
     * @return the picture
     */
    public Image of(Handle handle, Palette palette, double scale) {
        return kept.computeIfAbsent(
                new Key(handle, palette, scale),
                key -> {
                    painted++;
                    return PiecePicture.of(handle, palette, scale);
                });
    }

    /**
     * How many pictures were painted so far.
     *
     * @return the count
     */
    public int painted() {
        return painted;
    }
}
