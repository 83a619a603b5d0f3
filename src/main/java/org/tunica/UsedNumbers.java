package org.tunica;

import java.util.HashSet;
import java.util.Set;
import org.tunica.casefile.Faults;
import org.tunica.drawing.WallStrip;
import org.tunica.firmness.FirmAdviser;
import org.tunica.knowledge.CodeFile;
import org.tunica.knowledge.Knowledge;
import org.tunica.outcomes.OutcomeNumbers;
import org.tunica.pastcases.AnonymityLimits;
import org.tunica.physics.Physics;
import org.tunica.plan.ScoreWeights;
import org.tunica.rules.RuleBook;
import org.tunica.session.SessionPlanner;
import org.tunica.similar.PastSigns;
import org.tunica.similar.Similarity;
import org.tunica.treatment.DeliveredLimits;
import org.tunica.treatment.FollowUpLimits;
import org.tunica.treatment.ScanPlan;
import org.tunica.watching.WatchNumbers;

/** A number of the knowledge that nothing reads would be one somebody believes to be in force. */
final class UsedNumbers {
    private UsedNumbers() {}

    /**
     * Makes sure that every number is read by a rule or a model.
     *
     * @throws org.tunica.casefile.FaultyInput with each that is not
     */
    static void check(Knowledge knowledge, Physics physics, RuleBook rules) {
        Set<String> used = new HashSet<>(rules.limitsUsed());
        used.addAll(physics.quantitiesUsed());
        used.addAll(ScoreWeights.IDS);
        used.addAll(SessionPlanner.IDS);
        used.addAll(FirmAdviser.ids());
        used.addAll(FollowUpLimits.IDS);
        used.addAll(ScanPlan.IDS);
        used.addAll(OutcomeNumbers.IDS);
        used.addAll(DeliveredLimits.IDS);
        used.add(CodeFile.MOST_AGE);
        used.addAll(Similarity.IDS);
        used.addAll(PastSigns.IDS);
        used.addAll(AnonymityLimits.IDS);
        used.addAll(WallStrip.IDS);
        used.addAll(WatchNumbers.IDS);
        Faults faults = new Faults();
        knowledge.quantities().keySet().stream()
                .filter(id -> !used.contains(id))
                .forEach(id -> faults.add("knowledge", id + " is used by no rule and no model"));
        faults.throwIfAny("knowledge");
    }
}
