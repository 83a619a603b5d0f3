package org.tunica.store;

import java.util.Collections;
import java.util.Set;
import java.util.TreeSet;

/**
 * What a card spoke of. Nothing of the case, nothing of the patient.
 *
 * @param card its id
 * @param service the service that gave it
 * @param releaseVersion of the rules behind it
 * @param releaseDigest of the same
 * @param technique id of the technique it was about; empty when it was about none
 * @param standing how that technique stood; empty likewise
 * @param rules ids of the rules it rested on
 */
public record GivenCard(
        String card,
        String service,
        String releaseVersion,
        String releaseDigest,
        String technique,
        String standing,
        Set<String> rules) {
    public GivenCard {
        rules = Collections.unmodifiableSet(new TreeSet<>(rules));
    }
}
