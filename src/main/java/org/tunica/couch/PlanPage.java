package org.tunica.couch;

import java.util.List;
import java.util.Optional;
import org.tunica.frame.Frame;
import org.tunica.pages.PlanView;

/**
 * A plan of sessions for a case.
 *
 * @param shown which plan this is, in a sentence
 * @param kept plans that are kept, the last one first
 * @param number of the plan shown among those; absent for one that is not kept
 * @param mayKeep whether the reader may keep it, or record what was delivered
 */
public record PlanPage(
        Frame frame,
        String caseRef,
        String shown,
        PlanView plan,
        List<KeptLine> kept,
        Optional<Long> number,
        boolean mayKeep) {
    public PlanPage {
        kept = List.copyOf(kept);
    }
}
