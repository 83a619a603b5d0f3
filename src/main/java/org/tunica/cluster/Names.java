package org.tunica.cluster;

import java.util.List;

/**
 * Names of indexes on the engine. The one in use answers to a name of its layout; two take turns behind it, so that one can be
 * loaded while the other answers.
 */
record Names(String layout) {
    private static final String PREFIX = "tunica-segments-";

    /** By which the index in use is asked. */
    String inUse() {
        return PREFIX + layout;
    }

    List<String> turns() {
        return List.of(inUse() + "-a", inUse() + "-b");
    }
}
