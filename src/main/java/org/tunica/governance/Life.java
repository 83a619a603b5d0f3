package org.tunica.governance;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * What the steps recorded of a release come to at a moment.
 *
 * @param due an activation that is still ahead
 * @param activation the one that took effect
 */
record Life(ReleaseState state, Optional<Step> due, Optional<Step> activation) {
    static Life at(Instant moment, List<Step> steps) {
        Life life = new Life(ReleaseState.DRAFT, Optional.empty(), Optional.empty());
        for (Step step : steps) {
            if (!step.at().isAfter(moment)) {
                life = life.on(step.at()).after(step);
            }
        }
        return life.on(moment);
    }

    /** When a planned activation comes due, the release is active; nobody records that. */
    private Life on(Instant moment) {
        boolean comes = due.filter(step -> !step.from().isAfter(moment)).isPresent();
        return comes ? new Life(ReleaseState.ACTIVE, Optional.empty(), due) : this;
    }

    private Life after(Step step) {
        if (step.kind() == StepKind.ACTIVATED) {
            return new Life(state, Optional.of(step), activation).on(step.at());
        }
        return step.kind()
                .leadsTo()
                .map(following -> new Life(following, Optional.empty(), activation))
                .orElse(this);
    }
}
