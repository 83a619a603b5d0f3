package org.tunica.replay;

import java.util.List;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Segment;
import org.tunica.knowledge.Knowledge;
import org.tunica.pastcases.PastCaseReader;
import org.tunica.physics.Derived;
import org.tunica.physics.HeatMemory;
import org.tunica.physics.Physics;
import org.tunica.plan.Advice;
import org.tunica.plan.OptionJudgement;
import org.tunica.plan.Planner;
import org.tunica.plan.Rated;
import org.tunica.plan.SegmentJudgement;
import org.tunica.rules.Considered;
import org.tunica.rules.OptionFacts;
import org.tunica.rules.RuleBook;
import org.tunica.rules.Verdict;

/** One of the two releases of a replay, ready to judge. Immutable. */
public record ReleaseSide(
        Advice.Release name,
        Knowledge knowledge,
        HeatMemory memory,
        Physics physics,
        RuleBook rules,
        Planner planner,
        PastCaseReader reader) {

    /**
     * A release with a memory of heat settings.
     *
     * @param memory of the constants of this release, see {@link Physics#heatDigest()}
     */
    public static ReleaseSide of(Advice.Release name, Knowledge knowledge, RuleBook rules, HeatMemory memory) {
        Physics physics = new Physics(knowledge, memory);
        return new ReleaseSide(
                name,
                knowledge,
                memory,
                physics,
                rules,
                new Planner(knowledge, physics, rules),
                new PastCaseReader(knowledge));
    }

    SegmentJudgement judge(CaseFile caseFile, Limb limb, Segment segment) {
        return judge(considered(caseFile, limb, segment, physics.deriveInTurn(caseFile, segment)));
    }

    List<Considered> considered(CaseFile caseFile, Limb limb, Segment segment, Derived derived) {
        return planner.considered(caseFile, limb, segment, derived);
    }

    private SegmentJudgement judge(List<Considered> options) {
        return planner.judgement(options, rules.judgeInOnePass(rules.facts(options)));
    }

    /** What one option comes to, whatever the others. */
    Judged judge(Considered option, OptionFacts facts) {
        List<Verdict> verdicts = rules.judgeInOnePass(List.of(facts));
        return new Judged(planner.judgement(option, verdicts), planner.rate(option, verdicts));
    }

    /** An option in full, and as it takes part in the ranking. */
    record Judged(OptionJudgement judgement, Rated rated) {}
}
