package org.tunica.outcomes;

import java.util.Optional;
import org.tunica.paper.Block;

/** The charts of an audit; a text has none, and its tables say the same. */
interface AuditDrawings {
    /** A page without any. */
    AuditDrawings NONE = new AuditDrawings() {};

    /** How long the veins of a technique stayed closed. */
    default Optional<Block> curve(AuditedTechnique audited) {
        return Optional.empty();
    }

    /** Its results against published rates, case by case. */
    default Optional<Block> chart(AuditedTechnique audited) {
        return Optional.empty();
    }

    /** Its failures year by year. */
    default Optional<Block> years(AuditedTechnique audited) {
        return Optional.empty();
    }

    /** Its failures site by site. */
    default Optional<Block> sites(AuditedTechnique audited) {
        return Optional.empty();
    }
}
