package org.tunica.couch;

import java.util.List;
import org.tunica.frame.Frame;

/**
 * The list of kept cases, and where another one is put in.
 *
 * @param cases the ones saved last
 * @param mayWrite whether the reader may save a case
 * @param text of a case that was sent and not saved, to be mended; empty at first
 * @param faults why it was not saved, each with its place
 */
public record CasesPage(Frame frame, List<CaseLine> cases, boolean mayWrite, String text, List<String> faults) {}
