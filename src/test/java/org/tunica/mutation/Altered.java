package org.tunica.mutation;

import java.util.Map;
import org.tunica.knowledge.ChangeRecord;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.Quantity;

/**
 * The shipped knowledge with a part exchanged, without its ledger and hazards: scenarios are to notice a mutant, not
 * bookkeeping.
 */
final class Altered {
    private Altered() {}

    static Knowledge knowledge(Knowledge all, Map<String, Quantity> quantities, Map<String, ChangeRecord> changes) {
        return new Knowledge(
                all.sources(),
                quantities,
                all.techniques(),
                all.conditions(),
                all.allergies(),
                all.measurements(),
                changes,
                Map.of(),
                Map.of(),
                Map.of(),
                Map.of(),
                all.intendedUse(),
                all.principles(),
                all.afterCare(),
                all.plain(),
                all.rates(),
                all.codes(),
                all.invented(),
                all.words(),
                all.decisions(),
                all.likeness(),
                all.glossary());
    }
}
