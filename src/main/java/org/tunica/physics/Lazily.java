package org.tunica.physics;

import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** A value made when it is first asked for, once. */
final class Lazily<T> {
    private final Supplier<T> make;
    private volatile @Nullable T made;

    Lazily(Supplier<T> make) {
        this.make = make;
    }

    T get() {
        T value = made;
        if (value == null) {
            synchronized (this) {
                value = made == null ? make.get() : made;
                made = value;
            }
        }
        return value;
    }
}
