package org.tunica.treatment;

import java.util.List;
import java.util.Optional;
import org.tunica.casefile.Segment;
import org.tunica.knowledge.Family;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.Quantity;
import org.tunica.knowledge.Statement;

/**
 * When a treated segment is scanned again, by its technique and vein, in days after the procedure. The numbers are those of
 * knowledge/follow-up.yaml, the words those of knowledge/after-care.yaml.
 *
 * @param scans in the order they are due; the last one is optional and repeats
 */
public record ScanPlan(List<Scan> scans) {
    /** Days of a month in UCUM (mo_j): a twelfth of a Julian year. */
    private static final double DAYS_PER_MONTH = 365.25 / 12;

    private static final String FIRST = "follow-up.scan.first.by";
    private static final String EARLY_FROM = "follow-up.scan.early.from";
    private static final String EARLY_TO = "follow-up.scan.early.to";
    private static final String YEAR = "follow-up.scan.year";
    private static final String EVERY = "follow-up.scan.every";
    private static final String AGAIN = "follow-up.clot.scan-again";

    /** The ids of knowledge/ it reads. */
    public static final List<String> IDS = List.of(FIRST, EARLY_FROM, EARLY_TO, YEAR, EVERY, AGAIN);

    public ScanPlan {
        scans = List.copyOf(scans);
    }

    /**
     * One scan.
     *
     * @param fromDays first day it is due, after the procedure
     * @param byDays last day
     * @param looksAt the deep vein or junction that is looked at
     * @param source of the day; {@code why} names its own
     * @param optional whether it may be left out
     */
    public record Scan(
            long fromDays,
            long byDays,
            String looksAt,
            Statement why,
            String source,
            String standing,
            boolean optional) {

        /** The same scan when the procedure was so many days later. */
        Scan laterBy(long days) {
            return new Scan(fromDays + days, byDays + days, looksAt, why, source, standing, optional);
        }
    }

    /** The plan for a segment. */
    public static ScanPlan of(Family family, Segment.Vein vein, Knowledge knowledge) {
        String where = looksAt(vein);
        long year = days(knowledge.quantity(YEAR));
        long next = year + days(knowledge.quantity(EVERY));
        String first = family == Family.HEAT ? "scan.first.heat" : "scan.first.other";
        return new ScanPlan(List.of(
                scan(0, days(knowledge.quantity(FIRST)), where, first, FIRST, knowledge),
                scan(
                        days(knowledge.quantity(EARLY_FROM)),
                        days(knowledge.quantity(EARLY_TO)),
                        where,
                        "scan.early",
                        EARLY_TO,
                        knowledge),
                scan(year, year, where, "scan.year", YEAR, knowledge),
                scan(next, next, where, "scan.every", EVERY, knowledge)));
    }

    /**
     * The scan due next, when scans were made on these days. A scan counts for the one of the plan it is nearest to, so a
     * late first scan is still the first.
     *
     * @param scannedDays days after the procedure, rising
     * @param clotDay day of the last scan, when it saw a clot that must be looked at again
     */
    Scan next(List<Integer> scannedDays, Optional<Integer> clotDay, Knowledge knowledge) {
        Scan regular = scannedDays.isEmpty() ? scans.get(0) : after(scannedDays.get(scannedDays.size() - 1));
        return clotDay.map(day -> again(day, knowledge)).orElse(regular);
    }

    private Scan again(int day, Knowledge knowledge) {
        long due = day + days(knowledge.quantity(AGAIN));
        return scan(due, due, scans.get(0).looksAt(), "clot.scan-again", AGAIN, knowledge);
    }

    private Scan after(int day) {
        int at = 0;
        while (at < scans.size() - 1 && day > middle(scans.get(at), scans.get(at + 1))) {
            at++;
        }
        return at < scans.size() - 1 ? scans.get(at + 1) : yearly(day);
    }

    /** The first of the optional scans that is still ahead. */
    private Scan yearly(int day) {
        Scan last = scans.get(scans.size() - 1);
        long apart = last.byDays() - scans.get(scans.size() - 2).byDays();
        long due = last.byDays();
        while (day > due - apart / 2.0) {
            due += apart;
        }
        return new Scan(due, due, last.looksAt(), last.why(), last.source(), last.standing(), true);
    }

    private static double middle(Scan one, Scan next) {
        return (one.byDays() + next.fromDays()) / 2.0;
    }

    private static Scan scan(long from, long by, String where, String why, String id, Knowledge knowledge) {
        Quantity quantity = knowledge.quantity(id);
        Statement statement = knowledge.afterCare(why);
        // what is said of another technique or of custom may stand less firm than the number
        boolean weaker = statement.standing().compareTo(quantity.provenance().standing()) > 0;
        String source = weaker ? statement.source() : quantity.provenance().source();
        return new Scan(
                from,
                by,
                where,
                statement,
                source,
                (weaker ? statement.standing() : quantity.provenance().standing()).word(),
                why.equals("scan.every"));
    }

    private static long days(Quantity quantity) {
        return switch (quantity.unit()) {
            case "d" -> Math.round(quantity.value());
            case "mo" -> Math.round(quantity.value() * DAYS_PER_MONTH);
            default ->
                throw new IllegalArgumentException(quantity.id() + " must be in d or mo, is in " + quantity.unit());
        };
    }

    private static String looksAt(Segment.Vein vein) {
        return switch (vein) {
            case SMALL_SAPHENOUS, THIGH_EXTENSION -> "the treated vein and the popliteal vein";
            case PERFORATOR -> "the treated vein and the deep vein it joins";
            case TRIBUTARY, RECURRENT_CHANNEL -> "the treated vein and the deep veins near it";
            case GREAT_SAPHENOUS, ANTERIOR_ACCESSORY, POSTERIOR_ACCESSORY -> "the treated vein and the femoral vein";
        };
    }
}
