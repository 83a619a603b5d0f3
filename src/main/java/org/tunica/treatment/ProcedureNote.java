package org.tunica.treatment;

import java.util.List;
import java.util.Optional;
import org.tunica.paper.Document;
import org.tunica.physics.HeatGiven;

/**
 * The note of a session: the page for people and, as data, what the heat model says of every stretch.
 *
 * @param caseRef the case
 * @param page what text, HTML and PDF print
 * @param stretches every stretch that was heated, in the order of the record
 */
public record ProcedureNote(String caseRef, Document page, List<HeatedStretch> stretches) {
    public ProcedureNote {
        stretches = List.copyOf(stretches);
    }

    /**
     * One stretch that was heated with one setting.
     *
     * @param ref of its segment
     * @param number of the stretch in its segment, from the junction down, from 1
     * @param alone whether the segment has no other
     * @param heat as recorded
     * @param balance the same completed by what follows from it
     * @param effect what the heat model says of it
     * @param killed the same as a word
     */
    public record HeatedStretch(
            String ref,
            int number,
            boolean alone,
            DeliveredHeat heat,
            HeatBalance balance,
            HeatGiven.Effect effect,
            Killed killed) {

        /** Length, when it is known. */
        Optional<String> length() {
            var cm = balance.value(HeatBalance.Number.LENGTH);
            return cm.isPresent() ? Optional.of(HeatBalance.Number.LENGTH.with(cm.getAsDouble())) : Optional.empty();
        }
    }
}
