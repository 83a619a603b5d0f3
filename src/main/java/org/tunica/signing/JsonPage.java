package org.tunica.signing;

import tools.jackson.databind.node.ObjectNode;

/** JSON for people to read and for digests to cover: the same tree gives the same bytes on every system. */
public final class JsonPage {
    private JsonPage() {}

    /** The tree over several lines, with a line break at its end. */
    public static String of(ObjectNode tree) {
        return tree.toPrettyString().replace("\r\n", "\n") + "\n";
    }
}
