package haftline.ui.app;

import java.util.Optional;
import java.util.function.Supplier;

/**
 * A part of the window that is made when it is first asked for, so that the window opens without
 * it. For the window's thread alone.
 *
 * @param <T> the part
 */
final class Late<T> implements Supplier<T> {
    private final Supplier<T> maker;
    private Optional<T> made = Optional.empty();

    /**
     * @param maker makes it, once
     */
    Late(Supplier<T> maker) {
        this.maker = maker;
    }

    @Override
    public T get() {
        if (made.isEmpty()) {
            made = Optional.of(maker.get());
        }
        return made.get();
    }

    /** The part, or empty where nobody has asked for it yet. */
    Optional<T> made() {
        return made;
    }
}
