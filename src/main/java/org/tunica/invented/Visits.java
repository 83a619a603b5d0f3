package org.tunica.invented;

import java.util.ArrayList;
import java.util.List;
import org.tunica.knowledge.Distribution;
import org.tunica.knowledge.Knowledge;

/** On which days somebody comes back, until the follow-up is lost. */
final class Visits {
    private final List<Distribution> planned = new ArrayList<>();

    Visits(Knowledge knowledge) {
        for (int i = 1; knowledge.invented().containsKey("invented.visit." + i); i++) {
            planned.add(knowledge.invented("invented.visit." + i));
        }
    }

    /** The visits of one case; the first is never missed, so that every case has an outcome. */
    List<Visit> from(Draw draw) {
        List<Visit> kept = new ArrayList<>();
        for (int i = 0; i < planned.size(); i++) {
            Distribution visit = planned.get(i);
            if (draw.happens(visit.number("lost"))) {
                break;
            }
            double off = draw.between(-visit.number("off"), visit.number("off"));
            boolean missed = draw.happens(visit.number("missed"));
            if (!missed) {
                kept.add(new Visit(i + 1, (int) Math.rint(visit.number("day") + off)));
            }
        }
        return kept;
    }

    /** One visit that was kept, by its number in the plan of visits. */
    record Visit(int number, int day) {
        boolean first() {
            return number == 1;
        }
    }
}
