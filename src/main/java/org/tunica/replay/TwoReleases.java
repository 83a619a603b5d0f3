package org.tunica.replay;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Segment;
import org.tunica.physics.Derived;
import org.tunica.rules.Considered;
import org.tunica.rules.OptionFacts;
import org.tunica.rules.RuleShift;

/**
 * Two releases side by side over one case. A segment for which no rule that differs can turn comes out the same, and is not
 * judged at all; the others are judged under both. Immutable and safe for several threads.
 */
final class TwoReleases {
    private final ReleaseSide before;
    private final ReleaseSide after;
    private final Sameness same;
    private final RuleShift shift;
    private final Comparer comparer;

    TwoReleases(ReleaseSide before, ReleaseSide after) {
        this.before = before;
        this.after = after;
        this.same = Sameness.of(before, after);
        this.shift = RuleShift.between(before.rules(), after.rules());
        this.comparer = Comparer.of(before.knowledge(), before.rules(), after.knowledge(), after.rules());
    }

    ReleaseSide before() {
        return before;
    }

    ReleaseSide after() {
        return after;
    }

    /** Whether both can read the same cases. */
    boolean readAlike() {
        return same.words();
    }

    /** What comes out otherwise of a case, in its order. */
    List<ReplayedSegment> changed(CaseFile caseFile) {
        List<ReplayedSegment> changed = new ArrayList<>();
        for (Limb limb : caseFile.limbs()) {
            for (Segment segment : limb.segments()) {
                changed(caseFile, limb, segment)
                        .map(one -> ReplayedSegment.of(caseFile, limb, segment, one))
                        .ifPresent(changed::add);
            }
        }
        return changed;
    }

    private Optional<ChangedSegment> changed(CaseFile caseFile, Limb limb, Segment segment) {
        if (!mayChange(caseFile, limb, segment)) {
            return Optional.empty();
        }
        if (!same.models()) {
            return comparer.compare(before.judge(caseFile, limb, segment), after.judge(caseFile, limb, segment));
        }
        List<Considered> options =
                before.considered(caseFile, limb, segment, before.physics().deriveInTurn(caseFile, segment));
        return new TurningOptions(before, after, same, shift, comparer)
                .compare(options, before.rules().facts(options));
    }

    /** Whether both ask the heat model the same and get the same answers. */
    boolean sharesHeat() {
        return same.models();
    }

    /** Whether a segment can come out otherwise; what the heat model foresees is asked for only where it can matter. */
    private boolean mayChange(CaseFile caseFile, Limb limb, Segment segment) {
        if (!same.butForRules()) {
            return true;
        }
        if (shift.none()) {
            return false;
        }
        List<OptionFacts> facts = factsWithoutHeat(caseFile, limb, segment);
        return facts.stream().anyMatch(shift::mayTurn)
                || facts.stream().anyMatch(shift::restsOnHeat)
                        && facts(caseFile, limb, segment, before.physics().deriveInTurn(caseFile, segment)).stream()
                                .anyMatch(shift::mayTurn);
    }

    /** Whether a replay of a segment asks what the heat model foresees. */
    boolean asksHeat(CaseFile caseFile, Limb limb, Segment segment) {
        return !same.butForRules()
                || !shift.none()
                        && factsWithoutHeat(caseFile, limb, segment).stream()
                                .anyMatch(facts -> shift.mayTurn(facts) || shift.restsOnHeat(facts));
    }

    private List<OptionFacts> factsWithoutHeat(CaseFile caseFile, Limb limb, Segment segment) {
        return facts(caseFile, limb, segment, before.physics().deriveWithoutHeat(caseFile, segment));
    }

    private List<OptionFacts> facts(CaseFile caseFile, Limb limb, Segment segment, Derived derived) {
        return before.rules().facts(before.considered(caseFile, limb, segment, derived));
    }
}
