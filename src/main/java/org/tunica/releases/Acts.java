package org.tunica.releases;

import org.tunica.governance.StepKind;
import org.tunica.store.Act;

/** Steps of a release as the audit trail calls them. */
final class Acts {
    private static final String PREFIX = "RELEASE_";

    private Acts() {}

    static Act of(StepKind kind) {
        return Act.valueOf(PREFIX + kind.name());
    }

    static StepKind kind(Act act) {
        return StepKind.valueOf(act.name().substring(PREFIX.length()));
    }
}
