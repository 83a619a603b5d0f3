package org.tunica.office;

import java.util.List;
import org.tunica.frame.Frame;

/**
 * Every release of the place.
 *
 * @param inForce what is in force, in words
 * @param scheduled what comes into force later, in words; often none
 * @param shadow what runs silently beside, in words; often none
 * @param rows the one built last first
 * @param mayRollBack whether the reader may roll back, and there is something to go back to
 */
public record ReleasesPage(
        Frame frame, String inForce, List<String> scheduled, List<String> shadow, List<Row> rows, boolean mayRollBack) {
    /** A release; what is missing are signatures. */
    public record Row(
            String version,
            String title,
            String state,
            String effective,
            String signed,
            String missing,
            String digest) {}
}
