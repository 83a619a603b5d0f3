package org.tunica.outcomes;

import java.util.List;
import java.util.Optional;

/**
 * Results of one technique, counted by one definition of closure.
 *
 * @param outcome of all its segments
 * @param bySite the same site by site
 * @param byYear the same year by year
 * @param watch against published rates, case by case; absent where {@code remarks} say why
 * @param remarks what is left out, and why
 */
public record AuditedTechnique(
        TechniqueOutcome outcome, Split bySite, Split byYear, Optional<Watch> watch, List<String> remarks) {
    public AuditedTechnique {
        remarks = List.copyOf(remarks);
    }
}
