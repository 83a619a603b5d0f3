package org.tunica.library;

import java.util.List;
import java.util.Optional;
import org.tunica.frame.Frame;
import org.tunica.paper.Document;

/**
 * Results of past cases.
 *
 * @param typed what was asked for
 * @param techniques to choose from
 * @param sites that are large enough to be told of
 * @param faults what cannot be asked
 * @param document the answer; absent where nothing is released or the question is faulty
 * @param pdf where the same stands as PDF
 * @param leftOut past cases that cannot be read, in words; empty for none
 */
public record ResultsPage(
        Frame frame,
        Typed typed,
        List<Technique> techniques,
        List<String> sites,
        List<String> faults,
        Optional<Document> document,
        String pdf,
        String leftOut) {
    public ResultsPage {
        techniques = List.copyOf(techniques);
        sites = List.copyOf(sites);
        faults = List.copyOf(faults);
    }

    /** A technique by name. */
    public record Technique(String id, String says) {}

    /**
     * What was typed; empty where nothing was.
     *
     * @param technique the one whose results are wanted with charts
     * @param against another, whose curve is held against it
     * @param invented whether made-up cases are wanted
     */
    public record Typed(String site, String technique, String against, String from, String to, boolean invented) {}
}
