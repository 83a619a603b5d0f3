package org.tunica.statistics;

/**
 * A group, a place or a period to be compared with the rest.
 *
 * @param name what it is called
 * @param events how many of its cases had the event
 * @param total its cases, at least 1
 */
public record FunnelGroup(String name, int events, int total) {
    public FunnelGroup {
        Checked.atLeast("total", total, 1);
        Checked.within("events", events, 0, total);
    }

    /** Its share. */
    public double share() {
        return (double) events / total;
    }
}
