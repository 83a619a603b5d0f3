package org.tunica.couch;

import org.tunica.frame.Frame;
import org.tunica.pages.AdviceView;

/**
 * The advice for a kept case.
 *
 * @param line which version it is of
 * @param mayWrite whether the reader may change the case
 */
public record CasePage(Frame frame, CaseLine line, boolean mayWrite, AdviceView advice) {}
