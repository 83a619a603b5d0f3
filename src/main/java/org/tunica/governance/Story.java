package org.tunica.governance;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;

/**
 * Everything recorded of one release. Immutable.
 *
 * @param steps first to last
 */
public record Story(String version, List<Step> steps) {
    public Story {
        steps = List.copyOf(steps);
    }

    /** Where the release stood at a moment. */
    public ReleaseState stateAt(Instant moment) {
        return life(moment).state();
    }

    /** When it is to come into force, if that is still ahead at a moment. */
    public Optional<Instant> scheduledAt(Instant moment) {
        return life(moment).due().map(Step::from);
    }

    /** When it came into force, if it did by a moment. */
    public Optional<Instant> inForceSince(Instant moment) {
        return life(moment).activation().map(Step::from);
    }

    Life life(Instant moment) {
        return Life.at(moment, steps);
    }

    /**
     * The same with a further step.
     *
     * @throws FaultyInput with the reason when its state does not allow it
     */
    public Story with(Step step) {
        ReleaseState state = stateAt(step.at());
        step.kind()
                .leadsTo()
                .filter(following -> step.kind() != StepKind.BUILT)
                .ifPresent(following -> state.to(following, version));
        if (step.kind() == StepKind.REVIEWED && state != ReleaseState.ACTIVE) {
            throw refused(state, "only one that is active is reviewed again");
        }
        if (step.kind() == StepKind.SHADOWED && !canShadow(state)) {
            throw refused(state, "only one in review or approved can run as a shadow");
        }
        return new Story(version, Stream.concat(steps.stream(), Stream.of(step)).toList());
    }

    private FaultyInput refused(ReleaseState state, String why) {
        return new FaultyInput("release", List.of(new Fault("release " + version, "is " + state.words() + "; " + why)));
    }

    private static boolean canShadow(ReleaseState state) {
        return state == ReleaseState.IN_REVIEW || state == ReleaseState.APPROVED;
    }

    /** The last step of a kind. */
    public Optional<Step> last(StepKind kind) {
        return steps.stream().filter(step -> step.kind() == kind).reduce((earlier, later) -> later);
    }

    /** The day it was approved, UTC. */
    public Optional<LocalDate> approvedOn() {
        return last(StepKind.APPROVED).map(Story::day);
    }

    /** The day it was last reviewed after it was approved, UTC. */
    public Optional<LocalDate> lastReviewed() {
        return last(StepKind.REVIEWED).map(Story::day);
    }

    /** The day of the next review, if a review set it anew. */
    public Optional<LocalDate> reviewBy() {
        return last(StepKind.REVIEWED).flatMap(Step::reviewBy);
    }

    /** Whether it runs silently beside the one in force. */
    public boolean shadowAt(Instant moment) {
        return canShadow(stateAt(moment))
                && steps.stream()
                        .filter(step -> step.kind() == StepKind.SHADOWED || step.kind() == StepKind.SHADOW_ENDED)
                        .reduce((earlier, later) -> later)
                        .filter(step -> step.kind() == StepKind.SHADOWED)
                        .isPresent();
    }

    private static LocalDate day(Step step) {
        return LocalDate.ofInstant(step.at(), ZoneOffset.UTC);
    }
}
