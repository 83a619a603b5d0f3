package org.tunica.knowledge;

import java.util.Collection;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.tunica.casefile.Faults;
import org.tunica.casefile.Nearest;

/** Checks the words for patients against the rest: every technique has one way, every figure a row of evidence. */
final class PlainChecks {
    private final Knowledge knowledge;
    private final Map<String, String> files;
    private final Faults faults;

    PlainChecks(Knowledge knowledge, Map<String, String> files, Faults faults) {
        this.knowledge = knowledge;
        this.files = files;
        this.faults = faults;
    }

    void check() {
        PlainWords plain = knowledge.plain();
        Set<String> placed = new HashSet<>();
        plain.ways().values().forEach(way -> way(way, placed));
        knowledge.techniqueIds().stream()
                .filter(id -> !placed.contains(id))
                .forEach(id -> faults.add("knowledge/plain/ways.yaml", "no way has the technique " + id));
        plain.figures().values().forEach(this::figure);
        plain.sentences().values().forEach(one -> source(one.id(), one.source(), one.change()));
    }

    private void way(PlainWay way, Set<String> placed) {
        source(way.id(), way.source(), way.change());
        source(way.id() + ".may", way.may().source(), way.change());
        for (String technique : way.techniques()) {
            known(place(way.id()) + ".techniques", technique, knowledge.techniqueIds(), "technique");
            if (!placed.add(technique)) {
                faults.add(place(way.id()) + ".techniques", technique + " has another way already");
            }
        }
    }

    private void figure(PlainFigure figure) {
        String place = place(figure.id());
        source(figure.id(), figure.source(), figure.change());
        Map<String, PlainWay> ways = knowledge.plain().ways();
        figure.ways().forEach(way -> known(place + ".ways", way, ways.keySet(), "way"));
        figure.techniques()
                .forEach(technique -> known(place + ".techniques", technique, knowledge.techniqueIds(), "technique"));
        // rules that come without a ledger, as those of one site, have no rows to name
        if (!knowledge.evidence().isEmpty()) {
            row(place, figure);
        }
    }

    private void row(String place, PlainFigure figure) {
        known(place + ".row", figure.row(), knowledge.evidence().keySet(), "row of evidence");
        Evidence row = knowledge.evidence().get(figure.row());
        if (row != null && !row.sources().contains(figure.source())) {
            faults.add(place + ".source", figure.source() + " is no source of row " + figure.row());
        }
    }

    private void source(String id, String source, String change) {
        known(place(id) + ".source", source, knowledge.sources().keySet(), "source");
        known(place(id) + ".change", change, knowledge.changes().keySet(), "change record");
    }

    private String place(String id) {
        return files.get(id.replace(".may", "")) + ": " + id;
    }

    private void known(String place, String id, Collection<String> ids, String what) {
        if (!id.isEmpty() && !ids.contains(id)) {
            faults.add(place, "there is no " + what + " \"" + id + "\"" + Nearest.hint(id, ids));
        }
    }
}
