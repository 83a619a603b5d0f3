package org.tunica.session;

import java.util.Set;
import org.tunica.knowledge.Knowledge;

/** The numbers of a session, by their ids in knowledge/. */
final class SessionConstants {
    private final Knowledge knowledge;

    SessionConstants(Knowledge knowledge) {
        this.knowledge = knowledge;
        IDS.forEach(knowledge::value);
    }

    double of(String id) {
        if (!IDS.contains(id)) {
            throw new IllegalArgumentException(id + " is no number of a session");
        }
        return knowledge.value(id);
    }

    /** The ids of knowledge/ that session planning reads. */
    static final Set<String> IDS = Set.of(
            "session.generators.most",
            "session.stages.most",
            "session.stage.points",
            "session.points.preferred",
            "session.points.suitable",
            "session.points.careful",
            "session.sts.weak",
            "session.adhesive.first-gap",
            "session.time.start",
            "session.time.generator",
            "session.time.access",
            "session.time.tumescent",
            "session.time.foam",
            "session.time.turn",
            "session.time.close",
            "session.time.adhesive.first",
            "session.time.adhesive.next",
            "session.time.cooling",
            "session.time.heat",
            "dose.sts.liquid-session");
}
