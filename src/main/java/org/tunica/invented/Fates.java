package org.tunica.invented;

import java.util.LinkedHashMap;
import java.util.Map;
import org.tunica.casefile.Segment;
import org.tunica.knowledge.Distribution;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.PublishedRate;
import org.tunica.knowledge.Technique;

/**
 * When a closed vein fails. The share still closed at time t is the published share at its months to a power:
 *
 * <pre>S(t) = p ^ ((t / T) ^ k),   k under 1: most failures come early</pre>
 *
 * <p>In some cases the rank of the width, or of the wall, is the rank of the fate: the widest fail first. As each rank is even
 * among the veins treated alike, the share closed at T stays p.
 */
final class Fates {
    private static final double DAYS_PER_MONTH = 365.0 / 12;

    private final Map<String, Double> closedShares = new LinkedHashMap<>();
    private final double days;
    private final double power;
    private final double byWidthShare;
    private final double byWallShare;

    Fates(Knowledge knowledge) {
        Distribution elsewhere = knowledge.invented("invented.closed.elsewhere");
        for (Technique technique : knowledge.techniques().values()) {
            for (Segment.Vein vein : Segment.Vein.values()) {
                double published = published(knowledge, technique, vein);
                closedShares.put(
                        key(technique.id(), vein),
                        Double.isNaN(published)
                                ? elsewhere.number(technique.family().word())
                                : published);
            }
        }
        this.days = knowledge.invented("invented.closed.months").number("at") * DAYS_PER_MONTH;
        this.power = knowledge.invented("invented.failing").number("power");
        this.byWidthShare = knowledge.invented("invented.failing.by").number("width");
        this.byWallShare = knowledge.invented("invented.failing.by").number("wall");
    }

    private static double published(Knowledge knowledge, Technique technique, Segment.Vein vein) {
        return knowledge.rates().values().stream()
                .filter(rate -> rate.techniques().contains(technique.id())
                        && rate.veins().contains(vein.word()))
                .mapToDouble(PublishedRate::share)
                .average()
                .orElse(Double.NaN);
    }

    /** Share closed at the months of the rates, 0 to 1. */
    double closedShare(String technique, Segment.Vein vein) {
        Double share = closedShares.get(key(technique, vein));
        if (share == null) {
            throw new IllegalArgumentException("no technique " + technique);
        }
        return share;
    }

    private static String key(String technique, Segment.Vein vein) {
        return technique + " " + vein.word();
    }

    /** The day after the procedure from which the vein no longer counts as closed. */
    double failsOnDay(Draw draw, MadeSegment segment) {
        double share = closedShare(
                segment.technique().orElseThrow().id(), segment.segment().vein());
        double fresh = draw.fraction();
        double by = draw.fraction();
        double rank = by < byWidthShare
                ? segment.widthRankFraction()
                : by < byWidthShare + byWallShare ? segment.wallRankFraction() : fresh;
        return days * StrictMath.pow(StrictMath.log(rank) / StrictMath.log(share), 1 / power);
    }
}
