package haftline.cli;

import java.util.function.Supplier;

/** Worked out when it is first asked for, and then kept; for several threads. */
final class Once<T> implements Supplier<T> {
    private Supplier<T> make;
    private T made;

    Once(Supplier<T> make) {
        this.make = make;
    }

    @Override
    public synchronized T get() {
        if (make != null) {
            made = make.get();
            make = null;
        }
        return made;
    }
}
