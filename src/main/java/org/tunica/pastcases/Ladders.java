package org.tunica.pastcases;

import java.util.List;
import java.util.function.UnaryOperator;
import org.tunica.anonymity.Ladder;
import org.tunica.anonymity.Ladder.Rung;
import org.tunica.knowledge.Knowledge;

/** How what an outsider could know of a past case can be told less exactly. */
final class Ladders {
    private Ladders() {}

    /** In the order of the values of a row: whether it is invented, the profile, and what is rare. */
    static List<Ladder> of(Knowledge knowledge) {
        int together = AnonymityLimits.of(knowledge).coarser();
        return List.of(
                new Ladder("kind", List.of(Rung.exact("real or invented"))),
                new Ladder("age", bands(Banding.ofAge(knowledge), together)),
                new Ladder("sex", List.of(Rung.exact("told"), Rung.untold())),
                new Ladder("weight", bands(Banding.ofWeight(knowledge), together)),
                new Ladder("year", List.of(Rung.exact("told"), Rung.untold())),
                new Ladder("site", List.of(Rung.exact("told"), Rung.untold())),
                new Ladder("leg", List.of(Rung.exact("group of CEAP classes"), Rung.untold())),
                new Ladder("rare conditions", List.of(Rung.exact("told"), Rung.untold())));
    }

    private static List<Rung> bands(Banding banding, int together) {
        UnaryOperator<String> coarser = text -> Band.read(text)
                .map(band -> banding.coarser(band, together))
                .map(Band::toString)
                .orElse(text);
        return List.of(Rung.exact("bands"), new Rung("bands " + together + " times as wide", coarser), Rung.untold());
    }
}
