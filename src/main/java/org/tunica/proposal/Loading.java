package org.tunica.proposal;

import org.tunica.knowledge.Bundle;
import org.tunica.review.RuleReview;

/** How rules and knowledge are loaded by all of the program, so that a change passes exactly when the program would start. */
public interface Loading {
    /** @throws org.tunica.casefile.FaultyInput with every fault, file and line */
    RuleReview load(Bundle bundle);
}
