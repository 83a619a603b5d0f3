package org.tunica.treatment;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Faults;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.Technique;

/**
 * What was to be treated where, or what was.
 *
 * @param caseRef the name of the case
 * @param delivered whether records of the delivery were put in; then only what they name was treated
 */
public record TreatedPlan(String caseRef, List<TreatedSegment> segments, boolean delivered) {
    public TreatedPlan {
        segments = List.copyOf(segments);
    }

    /**
     * Reads the steps of a plan, {@code tunica-plan/1}.
     *
     * @param what the name of the input, for messages
     * @throws org.tunica.casefile.FaultyInput with every fault and its JSON path
     */
    public static TreatedPlan read(String what, byte[] json, Knowledge knowledge) {
        return new TreatedReader(knowledge).read(what, json);
    }

    /**
     * What was delivered of a case whose plan nobody kept, by its records alone. A segment that was not done, is not in the case
     * or has no technique recorded is left out; of two records of one segment the first counts.
     */
    public static TreatedPlan of(CaseFile caseFile, List<DeliveredSession> sessions, Knowledge knowledge) {
        Map<String, TreatedSegment> treated = new LinkedHashMap<>();
        for (DeliveredSession session : sessions) {
            for (DeliveredSegment delivered : session.segments()) {
                delivered
                        .technique()
                        .filter(technique -> delivered.notDone().isEmpty())
                        .map(knowledge::technique)
                        .flatMap(technique -> mapped(caseFile, delivered, technique))
                        .ifPresent(segment -> treated.putIfAbsent(segment.ref(), segment));
            }
        }
        return new TreatedPlan(caseFile.caseRef(), List.copyOf(treated.values()), true);
    }

    private static Optional<TreatedSegment> mapped(CaseFile caseFile, DeliveredSegment delivered, Technique technique) {
        return caseFile.limbs().stream()
                .flatMap(limb -> limb.segments().stream()
                        .filter(segment -> segment.ref().equals(delivered.ref()))
                        .map(segment -> new TreatedSegment(
                                segment.ref(),
                                limb.side(),
                                segment.vein(),
                                segment.level(),
                                technique.id(),
                                technique.says(),
                                technique.family(),
                                delivered.treatedLengthCm())))
                .findFirst();
    }

    /**
     * The same with what was really delivered: the technique used, the length treated, without what was not done.
     *
     * @throws org.tunica.casefile.FaultyInput when a record is of another case, names a segment that is not in the plan, or
     *     one that another record names too
     */
    TreatedPlan with(List<DeliveredSession> sessions, Knowledge knowledge) {
        if (sessions.isEmpty()) {
            return this;
        }
        Faults faults = new Faults();
        List<TreatedSegment> treated = new ArrayList<>();
        for (DeliveredSession session : sessions) {
            if (!session.caseRef().equals(caseRef)) {
                faults.add("delivered", "is of case \"" + session.caseRef() + "\", the plan of \"" + caseRef + "\"");
            }
            session.segments().forEach(segment -> add(segment, treated, knowledge, faults));
        }
        faults.throwIfAny("delivered");
        return new TreatedPlan(caseRef, treated, true);
    }

    private void add(DeliveredSegment delivered, List<TreatedSegment> treated, Knowledge knowledge, Faults faults) {
        String place = "segment " + delivered.ref();
        if (treated.stream().anyMatch(one -> one.ref().equals(delivered.ref()))) {
            faults.add(place, "was delivered twice");
            return;
        }
        segments.stream()
                .filter(one -> one.ref().equals(delivered.ref()))
                .findFirst()
                .ifPresentOrElse(
                        planned -> {
                            if (delivered.notDone().isEmpty()) {
                                treated.add(as(planned, delivered, knowledge));
                            }
                        },
                        () -> faults.add(place, "was delivered and is not in the plan"));
    }

    private static TreatedSegment as(TreatedSegment planned, DeliveredSegment delivered, Knowledge knowledge) {
        Technique technique = knowledge.technique(delivered.technique().orElse(planned.technique()));
        return new TreatedSegment(
                planned.ref(),
                planned.side(),
                planned.vein(),
                planned.level(),
                technique.id(),
                technique.says(),
                technique.family(),
                delivered.treatedLengthCm());
    }
}
