package org.tunica.replay;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.tunica.knowledge.Knowledge;
import org.tunica.plan.Advice;
import org.tunica.plan.OptionJudgement;
import org.tunica.plan.SegmentJudgement;
import org.tunica.rules.RuleBook;

/** Tells what differs between two advices of one case, each from a release of its own. Immutable. */
public final class Comparer {
    private final Turns turns;

    private Comparer(Turns turns) {
        this.turns = turns;
    }

    /**
     * A comparer of two releases.
     *
     * @param before knowledge of the release in force
     * @param after knowledge of the other, such as a draft
     */
    public static Comparer of(Knowledge before, RuleBook rulesBefore, Knowledge after, RuleBook rulesAfter) {
        return new Comparer(new Turns(before, rulesBefore.rules(), after, rulesAfter.rules()));
    }

    /**
     * Compares segment by segment.
     *
     * @throws IllegalArgumentException when the two are not of one case
     */
    public Comparison compare(Advice before, Advice after) {
        if (!before.caseRef().equals(after.caseRef())
                || before.segments().size() != after.segments().size()) {
            throw new IllegalArgumentException(
                    "advices of two cases: " + before.caseRef() + " and " + after.caseRef() + ", or of other segments");
        }
        List<ChangedSegment> changed = new ArrayList<>();
        for (int i = 0; i < before.segments().size(); i++) {
            compare(
                            SegmentJudgement.of(before.segments().get(i)),
                            SegmentJudgement.of(after.segments().get(i)))
                    .ifPresent(changed::add);
        }
        return new Comparison(before.caseRef(), before.segments().size(), changed);
    }

    /**
     * What differs in one segment; nothing when it comes out the same.
     *
     * @throws IllegalArgumentException when the two are not of one segment
     */
    public Optional<ChangedSegment> compare(SegmentJudgement before, SegmentJudgement after) {
        if (!before.ref().equals(after.ref())) {
            throw new IllegalArgumentException("two segments: " + before.ref() + " and " + after.ref());
        }
        List<ChangedOption> options = options(before, after);
        List<Turn> turned = turns.between(before, after);
        if (options.isEmpty() && turned.isEmpty() && before.first().equals(after.first())) {
            return Optional.empty();
        }
        return Optional.of(new ChangedSegment(
                before.ref(), gravity(before, after, options), before.first(), after.first(), options, turned));
    }

    private static List<ChangedOption> options(SegmentJudgement before, SegmentJudgement after) {
        TreeSet<String> techniques = new TreeSet<>();
        before.options().forEach(option -> techniques.add(option.technique()));
        after.options().forEach(option -> techniques.add(option.technique()));
        return techniques.stream()
                .map(technique -> option(technique, before.option(technique), after.option(technique)))
                .filter(option -> option.standsOtherwise() || !option.settings().isEmpty())
                .toList();
    }

    private static ChangedOption option(
            String technique, Optional<OptionJudgement> before, Optional<OptionJudgement> after) {
        return new ChangedOption(
                technique,
                before.map(OptionJudgement::standing),
                after.map(OptionJudgement::standing),
                before.isPresent() && after.isPresent()
                        ? SettingLines.changed(
                                before.get().settings(), after.get().settings())
                        : List.of());
    }

    private static Gravity gravity(SegmentJudgement before, SegmentJudgement after, List<ChangedOption> options) {
        if (!before.first().equals(after.first()) && after.first().isPresent()) {
            Gravity ofFirst = ofNewFirst(before.option(after.first().get()));
            if (ofFirst != Gravity.OTHER_LEADS) {
                return ofFirst;
            }
        }
        if (options.stream().anyMatch(ChangedOption::lostItsExclusion)) {
            return Gravity.EXCLUSION_LOST;
        }
        if (!before.first().equals(after.first())) {
            return after.first().isPresent() ? Gravity.OTHER_LEADS : Gravity.NOTHING_LEADS;
        }
        return ofOptions(options);
    }

    /** A technique nobody knew before was held back by nobody; that it leads is news all the same. */
    private static Gravity ofNewFirst(Optional<OptionJudgement> asBefore) {
        return asBefore.map(option -> switch (option.standing()) {
                    case EXCLUDED -> Gravity.FIRST_WAS_EXCLUDED;
                    case NOT_IN_ROOM, MEASURE_FIRST, CAREFUL -> Gravity.FIRST_WAS_HELD_BACK;
                    case SUITABLE, PREFERRED -> Gravity.OTHER_LEADS;
                })
                .orElse(Gravity.FIRST_WAS_HELD_BACK);
    }

    private static Gravity ofOptions(List<ChangedOption> options) {
        if (options.stream().anyMatch(ChangedOption::standsBetter)) {
            return Gravity.STANDS_BETTER;
        }
        if (options.stream().anyMatch(ChangedOption::isNewlyExcluded)) {
            return Gravity.EXCLUSION_NEW;
        }
        if (options.stream().anyMatch(ChangedOption::standsOtherwise)) {
            return Gravity.STANDS_WORSE;
        }
        return options.isEmpty() ? Gravity.REASONS : Gravity.SETTINGS;
    }
}
