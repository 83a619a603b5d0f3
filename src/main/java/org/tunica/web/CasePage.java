package org.tunica.web;

import org.tunica.pages.AdviceView;

/**
 * The advice for a kept case.
 *
 * @param line which version it is of
 */
record CasePage(Frame frame, CaseLine line, AdviceView advice) {}
