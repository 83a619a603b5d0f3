package org.tunica.store;

/** One column of a table; its value travels as text, also when it is a number. */
record Column(String name, boolean number) {
    static Column text(String name) {
        return new Column(name, false);
    }

    static Column number(String name) {
        return new Column(name, true);
    }

    /** The value as the driver takes it. */
    Object parameter(String value) {
        return number ? (Object) Long.valueOf(value) : value;
    }
}
