package org.tunica.couch;

import java.util.List;
import org.tunica.frame.Frame;

/**
 * The list of kept cases, and the ways to another one.
 *
 * @param cases the ones saved last
 * @param mayWrite whether the reader may save a case
 */
public record CasesPage(Frame frame, List<CaseLine> cases, boolean mayWrite) {}
