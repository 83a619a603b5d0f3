package org.tunica.session;

import java.util.ArrayList;
import java.util.List;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Segment;
import org.tunica.knowledge.Knowledge;
import org.tunica.physics.Derived;
import org.tunica.physics.Physics;
import org.tunica.plan.OptionAdvice;
import org.tunica.plan.SegmentAdvice;

/** The ranked techniques of each segment as candidates for a session. */
final class Candidates {
    private final Knowledge knowledge;
    private final Physics physics;
    private final DemandCalculator demands;
    private final Worth worth;

    Candidates(Knowledge knowledge, Physics physics, Worth worth) {
        this.knowledge = knowledge;
        this.physics = physics;
        this.demands = new DemandCalculator(knowledge);
        this.worth = worth;
    }

    /**
     * The candidates of a segment, best first. A technique a person has chosen is the only one, if it is ranked at all; one
     * that takes an amount nobody can tell is none, for it might pass a limit unseen.
     */
    List<Candidate> of(CaseFile caseFile, Limb limb, Segment segment, SegmentAdvice advice) {
        Derived derived = physics.derive(caseFile, segment);
        List<OptionAdvice> ranked = advice.options().stream()
                .filter(option -> option.standing().ranked())
                .toList();
        List<Integer> worths = worth.of(ranked);
        List<Candidate> candidates = new ArrayList<>();
        for (int i = 0; i < ranked.size(); i++) {
            OptionAdvice option = ranked.get(i);
            Demand demand = demands.of(
                    caseFile,
                    segment,
                    knowledge.technique(option.technique()),
                    derived.options().get(option.technique()));
            boolean wanted = segment.chosen().map(option.technique()::equals).orElse(true);
            if (wanted && demand.unknown().isEmpty()) {
                candidates.add(new Candidate(limb, segment, option, demand, worths.get(i)));
            }
        }
        return candidates;
    }
}
