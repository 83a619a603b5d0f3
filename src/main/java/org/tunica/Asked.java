package org.tunica;

import java.util.List;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.casefile.Nearest;
import org.tunica.casefile.Segment;
import org.tunica.knowledge.Knowledge;

/** What a user names besides a case must be there; a name close by is told. */
final class Asked {
    private final Knowledge knowledge;

    Asked(Knowledge knowledge) {
        this.knowledge = knowledge;
    }

    /**
     * Makes sure of a technique.
     *
     * @throws FaultyInput when there is none of that id
     */
    void technique(String id) {
        if (!knowledge.techniqueIds().contains(id)) {
            throw fault("technique " + id, "there is no such technique" + Nearest.hint(id, knowledge.techniqueIds()));
        }
    }

    /**
     * The segment of that name.
     *
     * @throws FaultyInput when the case has none
     */
    Segment segment(CaseFile caseFile, String ref) {
        List<Segment> segments = caseFile.limbs().stream()
                .flatMap(limb -> limb.segments().stream())
                .toList();
        List<String> refs = segments.stream().map(Segment::ref).toList();
        return segments.stream()
                .filter(segment -> segment.ref().equals(ref))
                .findFirst()
                .orElseThrow(() -> fault(
                        "segment " + ref,
                        "the case has none of that name, only " + String.join(", ", refs) + Nearest.hint(ref, refs)));
    }

    private static FaultyInput fault(String place, String says) {
        return new FaultyInput("input", List.of(new Fault(place, says)));
    }
}
