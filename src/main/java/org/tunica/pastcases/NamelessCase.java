package org.tunica.pastcases;

import java.util.Optional;
import org.tunica.casefile.CaseFile;

/**
 * An open case without the person, to be talked about. It is shown and thrown away: it never becomes a past case.
 *
 * @param caseFile measurements rounded, exact age, weight and height left out, segments named anew
 * @param ageBandYears age, as a band
 * @param weightBandKg weight, as a band
 */
public record NamelessCase(CaseFile caseFile, Optional<Band> ageBandYears, Optional<Band> weightBandKg) {}
