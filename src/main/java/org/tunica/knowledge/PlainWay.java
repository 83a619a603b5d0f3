package org.tunica.knowledge;

import java.util.List;

/**
 * One way of closing a vein, in words for patients.
 *
 * @param name as it is called on the sheet
 * @param techniques ids of the techniques that work this way; each technique has one way
 * @param what is done to the vein
 * @param before how the day starts
 * @param needles what is felt of needles
 * @param position how one lies
 * @param time what takes how long
 * @param after what comes afterwards
 * @param may what else may happen, told without a figure
 */
public record PlainWay(
        String id,
        String name,
        List<String> techniques,
        List<String> what,
        List<String> before,
        List<String> needles,
        List<String> position,
        List<String> time,
        List<String> after,
        May may,
        String source,
        Standing standing,
        String change) {

    /** Harms without a figure. */
    public record May(List<String> says, String source, Standing standing) {}
}
