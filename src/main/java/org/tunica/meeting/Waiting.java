package org.tunica.meeting;

import java.util.Optional;
import org.tunica.store.KeptDocument;
import org.tunica.store.Stamp;

/**
 * A case on its way through the meeting.
 *
 * @param caseRef the case
 * @param caseVersion the version it was sent in
 * @param referral as it stands now
 * @param sent when and by whom it was sent, or its date set last
 * @param decided the decision; absent while there is none
 */
record Waiting(String caseRef, long caseVersion, Referral referral, Stamp sent, Optional<KeptDocument> decided) {
    /** Whether it waits for a decision. */
    boolean open() {
        return decided.isEmpty() && !referral.withdrawn();
    }
}
