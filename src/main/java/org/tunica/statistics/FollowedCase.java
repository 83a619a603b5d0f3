package org.tunica.statistics;

/**
 * How long one case was followed, and whether that time ended with the event (such as a vein found open again) or merely with
 * the last look.
 *
 * @param daysAfter days from treatment to the event or to the last look
 * @param event whether the event was seen on that day
 */
public record FollowedCase(int daysAfter, boolean event) {
    public FollowedCase {
        Checked.atLeast("daysAfter", daysAfter, 0);
    }
}
