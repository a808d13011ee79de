package haftline.ui.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;

/**
 * A value that can be watched. Lives on the thread that draws; not safe for others.
 *
 * @param <T> a type with equality by content
 */
public final class Watched<T> {
    private final List<Consumer<? super T>> watchers = new ArrayList<>();
    private T value;

    /**
     * A value.
     *
     * @param first the value to begin with
     */
    public Watched(T first) {
        value = first;
    }

    /**
     * The value now.
     *
     * @return the value
     */
    public T value() {
        return value;
    }

    /**
     * Changes the value; watchers are told unless it is equal to the one before.
     *
     * @param next the new value
     */
    public void set(T next) {
        if (!Objects.equals(value, next)) {
            value = next;
            tell();
        }
    }

    /** Tells the watchers the value as it is. */
    void tell() {
        // A watcher may stop watching, or begin, while it is told.
        List.copyOf(watchers).forEach(watcher -> watcher.accept(value));
    }

    /**
     * Watches from now on.
     *
     * @param watcher told each new value
     * @return ends the watch when it is run
     */
    public Runnable watch(Consumer<? super T> watcher) {
        watchers.add(watcher);
        return () -> watchers.remove(watcher);
    }

    /**
     * Watches from now on, beginning with the value now.
     *
     * @param watcher told the value at once and then each new one
     * @return ends the watch when it is run
     */
    public Runnable follow(Consumer<? super T> watcher) {
        watcher.accept(value);
        return watch(watcher);
    }
}
