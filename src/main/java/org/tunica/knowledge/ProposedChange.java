package org.tunica.knowledge;

import java.util.List;

/**
 * Numbers somebody proposes to change, with the record of the change. Nothing of it is in force.
 *
 * @param record a draft
 * @param quantities as they would stand in {@code knowledge/}
 */
public record ProposedChange(ChangeRecord record, List<Quantity> quantities) {
    public ProposedChange {
        quantities = List.copyOf(quantities);
        if (record.status() != ChangeRecord.Status.DRAFT) {
            throw new IllegalArgumentException("status must be draft, got " + record.status());
        }
    }

    /** Two YAML documents: entries for a file of {@code knowledge/}, then a record for {@code rules/changes/}. */
    public String toYaml() {
        return ProposalText.of(this);
    }
}
