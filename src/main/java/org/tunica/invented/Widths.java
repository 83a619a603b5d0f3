package org.tunica.invented;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.tunica.casefile.Segment;
import org.tunica.knowledge.Distribution;
import org.tunica.knowledge.Family;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.Technique;

/** The widths of a vein, by the family of ways it was chosen for; a catheter is not put into a vein too narrow for it. */
final class Widths {
    private final Curve any;
    private final Map<Family, Curve> chosen = new EnumMap<>(Family.class);
    private final Curve narrowLaser;

    Widths(Knowledge knowledge, Segment.Vein vein) {
        this.any = Curve.of(knowledge.invented("invented.lumen." + vein.word()));
        Distribution wider = knowledge.invented("invented.lumen.by-family");
        Distribution most = knowledge.invented("invented.lumen.most");
        double catheterMm = knowledge.value("lumen.catheter.min");
        for (Family family : Family.values()) {
            boolean free = family == Family.FOAM || family == Family.FOCUSED_ULTRASOUND;
            chosen.put(
                    family,
                    any.times(wider.number(family.word())).within(free ? 0 : catheterMm, most.number(family.word())));
        }
        this.narrowLaser = chosen.get(Family.HEAT).within(0, knowledge.value("laser-1940.lumen.max"));
    }

    Curve of(Optional<Technique> technique) {
        if (technique.filter(way -> way.id().equals("laser-1940-radial")).isPresent()) {
            return narrowLaser;
        }
        return technique.map(way -> chosen.get(way.family())).orElse(any);
    }
}
