package org.tunica.knowledge;

import java.util.List;
import java.util.Map;

/**
 * What may stay of a free text that becomes part of a past case.
 *
 * @param openers words that may also open a sentence with a capital letter
 * @param lower words that stay in lower case only
 * @param phrases words that stay only side by side
 * @param abbreviations letters that stay exactly as written
 * @param titles words after which somebody is named
 * @param units what may stand before each unit of measure
 * @param provenance of the spans of the units
 */
public record ClinicalWords(
        List<String> openers,
        List<String> lower,
        List<List<String>> phrases,
        List<String> abbreviations,
        List<String> titles,
        Map<String, Span> units,
        Provenance provenance) {

    /**
     * What may stand before a unit.
     *
     * @param max the greatest number, in the unit it belongs to
     * @param decimals the most digits behind the point
     * @param clear whether the unit can be nothing else
     */
    public record Span(double max, int decimals, boolean clear) {}
}
