package org.tunica.session;

import java.util.Optional;

/**
 * The most of a share in one session.
 *
 * @param limit in the unit of the share
 * @param id where it stands: a limit of knowledge/, or the field of the case
 * @param aSegmentAloneMayPass whether one segment that takes more by itself, which rules judge, may fill a session alone
 * @param line a line below it above which a person confirms
 * @param note what must be said of it
 */
record SharedLimit(double limit, String id, boolean aSegmentAloneMayPass, Optional<Line> line, Optional<String> note) {

    /** A limit with nothing more to say. */
    static SharedLimit of(double limit, String id) {
        return new SharedLimit(limit, id, false, Optional.empty(), Optional.empty());
    }

    /** A line that warns. */
    record Line(double at, String id) {}
}
