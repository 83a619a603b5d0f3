package org.tunica.replay;

import java.util.List;
import java.util.stream.Collectors;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Segment;
import org.tunica.rules.Considered;
import org.tunica.rules.OptionFacts;
import org.tunica.rules.Verdict;

/**
 * Lets the rule engine itself judge a case again, under both releases. What the heat model foresees is left unknown there:
 * the rules are held against the engine, and unknown numbers are numbers to them too.
 */
final class EngineCheck {
    private final TwoReleases releases;

    EngineCheck(TwoReleases releases) {
        this.releases = releases;
    }

    /**
     * Judges a case again.
     *
     * @throws IllegalStateException when the engine finds anything else: a fault of this program
     */
    void check(CaseFile caseFile) {
        for (Limb limb : caseFile.limbs()) {
            for (Segment segment : limb.segments()) {
                check(releases.before(), caseFile, limb, segment);
                check(releases.after(), caseFile, limb, segment);
            }
        }
    }

    private static void check(ReleaseSide side, CaseFile caseFile, Limb limb, Segment segment) {
        List<Considered> options =
                side.considered(caseFile, limb, segment, side.physics().deriveWithoutHeat(caseFile, segment));
        List<OptionFacts> facts = side.rules().facts(options);
        List<Verdict> byEngine =
                side.rules().judge(options.stream().map(side.rules()::facts).toList());
        List<Verdict> inOnePass = side.rules().judgeInOnePass(facts);
        if (!byEngine.equals(inOnePass)) {
            throw new IllegalStateException("the rule engine finds something else for " + caseFile.caseRef() + ", "
                    + segment.ref() + ": " + only(byEngine, inOnePass) + " against " + only(inOnePass, byEngine));
        }
    }

    private static String only(List<Verdict> some, List<Verdict> others) {
        return some.stream()
                .filter(verdict -> !others.contains(verdict))
                .map(verdict -> verdict.rule().id() + " on " + verdict.option().techniqueId() + " " + verdict.doubt())
                .collect(Collectors.joining(", "));
    }
}
