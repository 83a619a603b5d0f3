package org.tunica.releases;

/** For tests elsewhere: a place with a release in force and one before it, and the way back. All invented. */
public final class TwoReleases {
    private TwoReleases() {}

    /** Puts 1.0.0 in force and then 1.1.0, at a place where nothing is kept yet. */
    public static void inForce(String place) {
        try (Office office = Office.staffed(place)) {
            office.inForce("1.0.0", Office.RULES);
            office.inForce("1.1.0", Office.WIDER_GAP);
        }
    }

    /** Rolls 1.1.0 back. */
    public static void rollBack(String place) {
        try (Office office = new Office(place)) {
            office.hours(3);
            office.desk.rollBack(Office.BY, "it warned too often");
        }
    }
}
