package org.tunica.governance;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Which release was in force when, over all releases of a place. Immutable. */
public record Timeline(List<Story> stories) {
    public Timeline {
        stories = List.copyOf(stories);
    }

    /** The version in force at a moment: of those that are active the one that came into force last. */
    public Optional<String> inForceAt(Instant moment) {
        return stories.stream()
                .filter(story -> story.stateAt(moment) == ReleaseState.ACTIVE)
                .max(byBeginning(moment))
                .map(Story::version);
    }

    /** The version that would be in force at a moment were another not there. */
    public Optional<String> inForceWithout(String version, Instant moment) {
        Stream<Story> others = stories.stream().filter(story -> !story.version().equals(version));
        return new Timeline(others.toList()).inForceAt(moment);
    }

    /** The version that took the place of another and is still active at a moment. */
    public Optional<String> supersededBy(String version, Instant moment) {
        Comparator<Story> order = byBeginning(moment);
        return story(version)
                .filter(story -> story.inForceSince(moment).isPresent())
                .flatMap(story -> stories.stream()
                        .filter(other -> other.stateAt(moment) == ReleaseState.ACTIVE)
                        .filter(other -> order.compare(other, story) > 0)
                        .min(order)
                        .map(Story::version));
    }

    private static Comparator<Story> byBeginning(Instant moment) {
        return Comparator.comparing((Story story) -> activation(story, moment).from())
                .thenComparing(story -> activation(story, moment).order());
    }

    private static Step activation(Story story, Instant moment) {
        return story.life(moment).activation().orElseThrow();
    }

    /** What is recorded of a version. */
    public Optional<Story> story(String version) {
        return stories.stream().filter(story -> story.version().equals(version)).findFirst();
    }

    /** The version that runs as a shadow: of several the one begun last. */
    public Optional<String> shadowAt(Instant moment) {
        return stories.stream()
                .filter(story -> story.shadowAt(moment))
                .max(Comparator.comparing(
                        story -> story.last(StepKind.SHADOWED).orElseThrow().order()))
                .map(Story::version);
    }
}
